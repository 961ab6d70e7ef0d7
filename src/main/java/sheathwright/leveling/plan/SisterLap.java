package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How far a sister lies against the old rafter where it stands highest above it.
 *
 * @param lap height by which the two lie against each other
 * @param enough the least lap against that
 * @param smallest the smallest nominal size that laps enough, or the word none
 */
public record SisterLap(
    @Column(value = "lap_in", marked = Marked.DOWN) Figure<Length> lap,
    @Column("lap_ratio") Check enough,
    @Column("smallest_size") Choice<String> smallest) {}
