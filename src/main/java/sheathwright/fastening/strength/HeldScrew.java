package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;

/**
 * What one screw holds against the wind.
 *
 * @param thread in sound wood that counts
 * @param resistance adjusted withdrawal
 */
public record HeldScrew(
    @Column("thread_held_in") Figure<Length> thread,
    @Column("resistance_lb") Figure<Force> resistance) {}
