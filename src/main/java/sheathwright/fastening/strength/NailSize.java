package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;

/**
 * A nail in numbers.
 *
 * @param diameter of the shank
 * @param length from head to point
 * @param head diameter of the round head
 * @param rings length of the ringed part; 0 for a smooth shank
 * @param bendingYield least average bending yield strength that the code asks of it
 */
public record NailSize(
    @Column("diameter_in") Figure<Length> diameter,
    @Column("length_in") Figure<Length> length,
    @Column("head_diameter_in") Figure<Length> head,
    @Column("rings_in") Figure<Length> rings,
    @Column("bending_yield_psi") Figure<Stress> bendingYield) {}
