package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A wood screw in numbers.
 *
 * @param diameter over the thread
 * @param root diameter under the thread
 * @param head diameter of the head
 */
public record ScrewDimensions(
    @Column("diameter_in") Figure<Length> diameter,
    @Column("root_diameter_in") Figure<Length> root,
    @Column("head_diameter_in") Figure<Length> head) {}
