package sheathwright.leveling.plan;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Time;

/**
 * What the pieces of a leveling plan cost and how long they take.
 *
 * @param sticks for one stick of each length that sisters are cut from
 * @param shim for one strip
 * @param sisterHours for one sister
 * @param shimHours for one strip
 * @param wage for one hour
 */
public record LevelPrices(
    List<Stick> sticks,
    Figure<Per<Money, Pieces>> shim,
    Figure<Per<Time, Pieces>> sisterHours,
    Figure<Per<Time, Pieces>> shimHours,
    Figure<Per<Money, Time>> wage) {

  /**
   * A stick on sale.
   *
   * @param stock its length
   * @param price of one
   */
  public record Stick(Figure<Length> stock, Figure<Per<Money, Pieces>> price) {}
}
