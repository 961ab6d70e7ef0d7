package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * A sister over a break in a rafter.
 *
 * @param moment that the sister carries across the break
 * @param shear that it carries across the break
 * @param near the greatest force on the nail group next to the break
 * @param far the greatest force on the nail group at the sister's end
 * @param nearNails in the group next to the break, in each sister
 * @param farNails in the group at the end, in each sister
 * @param leastLength of each sister, centered on the break
 * @param sister bending of each sister
 * @param ok whether the sister's bending is within 1
 * @param decision always the engineer's, before any repair
 */
public record SisterSplice(
    @Column("moment_in_lb") Figure<Moment> moment,
    @Column("shear_lb") Figure<Force> shear,
    @Column("near_lb") Figure<Force> near,
    @Column("far_lb") Figure<Force> far,
    @Column(value = "near_nails", unit = "nail") Figure<Nails> nearNails,
    @Column(value = "far_nails", unit = "nail") Figure<Nails> farNails,
    @Column(value = "least_length_ft", marked = Marked.UP) Figure<Length> leastLength,
    @Column("sister_ratio") Check sister,
    @Column("ok") Choice<YesNo> ok,
    @Column("decision") Choice<Decision> decision) {}
