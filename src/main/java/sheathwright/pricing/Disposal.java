package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;

/**
 * What it takes to be rid of one old sheet.
 *
 * @param weight of the old sheet
 * @param fee one ton at the dump
 */
public record Disposal(
    @Column(
            value = "disposal_lb",
            unit = "lb/sheet",
            least = 0,
            most = 500,
            rule = "about 45 for a half-inch sheet",
            symbol = "old sheet")
        Figure<Per<Force, Sheets>> weight,
    @Column(
            value = "disposal_usd_per_ton",
            least = 0,
            most = 2000,
            rule = "a ton of 2,000 lb",
            symbol = "dump fee")
        Figure<Per<Money, Force>> fee) {

  private static final Columns COLUMNS = Columns.of(Disposal.class);

  public Disposal {
    weight = COLUMNS.let("weight", weight);
    fee = COLUMNS.let("fee", fee);
  }

  /** An old sheet of this weight, at this fee for a ton. */
  public static Disposal of(Figure<Per<Force, Sheets>> weight, Figure<Per<Money, Force>> fee) {
    return new Disposal(weight, fee);
  }
}
