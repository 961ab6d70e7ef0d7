package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * How a toe-nail lies in its two members.
 *
 * @param sideBearing length that bears in the member it is driven through
 * @param mainBearing length that bears in the member that holds the point, along its face
 * @param penetration length in the member that holds the point, along the nail
 * @param lateralFactor what its lateral value is multiplied by
 * @param withdrawalFactor what its withdrawal value is multiplied by
 */
public record ToeNail(
    @Column("side_bearing_in") Figure<Length> sideBearing,
    @Column("main_bearing_in") Figure<Length> mainBearing,
    @Column("penetration_in") Figure<Length> penetration,
    @Column("lateral_factor") Figure<Ratio> lateralFactor,
    @Column("withdrawal_factor") Figure<Ratio> withdrawalFactor) {}
