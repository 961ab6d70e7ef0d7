package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;

/**
 * What two sheet ends have to stand on where they meet.
 *
 * @param left of the left sheet on the rafter
 * @param right of the right sheet on the rafter
 * @param ok whether both have at least the least bearing
 */
public record JointBearing(
    @Column(value = "left_in", marked = Marked.DOWN) Figure<Length> left,
    @Column(value = "right_in", marked = Marked.DOWN) Figure<Length> right,
    @Column("ok") Choice<YesNo> ok) {}
