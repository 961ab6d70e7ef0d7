package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;

/**
 * How fast a strip grows thicker.
 *
 * @param taper inches in 12 inches of length
 * @param steepness that against the most that is wanted
 * @param gradual whether it is within
 */
public record ShimTaper(
    @Column("taper_in_12") Figure<Ratio> taper,
    @Column("taper_ratio") Check steepness,
    @Column("gradual") Choice<YesNo> gradual) {}
