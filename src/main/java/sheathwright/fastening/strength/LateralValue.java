package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;

/**
 * What a nail carries across its length.
 *
 * @param lateral reference value Z of one nail in single shear
 * @param mode the yield mode that gives it
 */
public record LateralValue(
    @Column("lateral_lb") Figure<Force> lateral, @Column("mode") Choice<YieldMode> mode) {}
