package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;

/**
 * What a panel is worth as the wood that holds a nail.
 *
 * @param gravity equivalent specific gravity
 * @param wetUse to multiply the nail's value by
 */
public record HoldingGravity(
    @Column("specific_gravity") Figure<Ratio> gravity,
    @Column("wet_use_factor") Figure<Ratio> wetUse) {}
