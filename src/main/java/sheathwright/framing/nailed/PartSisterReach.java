package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * How far a sister must reach.
 *
 * @param alone bending of the old rafter before anything is done
 * @param reach the sister must end no further from a support than this
 * @param leastLength of the sister, centered, with its nails beyond those points
 * @param decision what has to be said beside it
 */
public record PartSisterReach(
    @Column("alone_ratio") Check alone,
    @Column(value = "reach_in", marked = Marked.UP) Figure<Length> reach,
    @Column(value = "least_length_ft", marked = Marked.UP) Figure<Length> leastLength,
    @Column("decision") Choice<Decision> decision) {}
