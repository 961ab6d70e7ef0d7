package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * What may come of an old sheet that was kept.
 *
 * @param share of kept sheets that fail under the new covering, as fail_rate finds it in the firm's
 *     callbacks
 * @param cost of one that fails, the covering opened and closed again
 */
public record LaterFailure(
    @Column(
            value = "fail_pct",
            least = 0,
            most = 100,
            rule = "of the sheets kept; fail_rate gives it from callbacks")
        Figure<Ratio> share,
    @Column(
            value = "fail_usd",
            unit = "$/sheet",
            least = 0,
            most = 100_000,
            rule = "to open and close a finished roof at one sheet, 900 for instance")
        Figure<Per<Money, Sheets>> cost) {

  private static final Columns COLUMNS = Columns.of(LaterFailure.class);

  public LaterFailure {
    share = COLUMNS.let("share", share);
    cost = COLUMNS.let("cost", cost);
  }

  /** A share of the kept sheets fails, at so much each. */
  public static LaterFailure of(Figure<Ratio> share, Figure<Per<Money, Sheets>> cost) {
    return new LaterFailure(share, cost);
  }
}
