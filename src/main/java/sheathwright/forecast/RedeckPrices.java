package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;

/**
 * What one place of the deck costs if its sheet is replaced by itself, laid anew with all others,
 * or kept.
 *
 * @param patch one bad sheet replaced where it lies
 * @param redeck one place where the whole deck is laid anew
 * @param keep one sound sheet kept: fastened again, joints made good
 */
public record RedeckPrices(
    @Column(
            value = "patch_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "one bad sheet by itself, 67 for instance")
        Figure<Per<Money, Sheets>> patch,
    @Column(
            value = "redeck_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "one place of a whole new deck, 58 for instance")
        Figure<Per<Money, Sheets>> redeck,
    @Column(
            value = "keep_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "one sound sheet fastened again, 6 for instance")
        Figure<Per<Money, Sheets>> keep) {

  private static final Columns COLUMNS = Columns.of(RedeckPrices.class);

  public RedeckPrices {
    patch = COLUMNS.let("patch", patch);
    redeck = COLUMNS.let("redeck", redeck);
    keep = COLUMNS.let("keep", keep);
  }

  /** One bad sheet by itself; the other two are still to be said. */
  public static RedeckPrices patch(Figure<Per<Money, Sheets>> each) {
    return new RedeckPrices(each, null, null);
  }

  public RedeckPrices redeck(Figure<Per<Money, Sheets>> each) {
    return new RedeckPrices(patch, each, keep);
  }

  public RedeckPrices keep(Figure<Per<Money, Sheets>> each) {
    return new RedeckPrices(patch, redeck, each);
  }
}
