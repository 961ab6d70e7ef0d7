package sheathwright.levelling;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Time;

/**
 * What the pieces of a levelling plan cost and how long they take.
 *
 * @param sister for one stick
 * @param shim for one strip
 * @param sisterHours for one sister
 * @param shimHours for one strip
 * @param wage for one hour
 */
public record LevelPrices(
    Figure<Per<Money, Pieces>> sister,
    Figure<Per<Money, Pieces>> shim,
    Figure<Per<Time, Pieces>> sisterHours,
    Figure<Per<Time, Pieces>> shimHours,
    Figure<Per<Money, Time>> wage) {}
