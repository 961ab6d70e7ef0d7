package sheathwright.life.bill;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;

/**
 * One line of the agreed sum: a line of the quote, or an option that the owner chose.
 *
 * @param what it is for
 * @param quantity how many
 * @param unit of what
 * @param each the price of one
 */
public record AgreedSum(String what, Figure<Ratio> quantity, String unit, Figure<Money> each) {

  /** What it comes to. */
  public Figure<Money> amount() {
    return quantity.times(each).in(Units.USD).toCents();
  }
}
