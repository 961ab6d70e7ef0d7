package sheathwright.forecast;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;

/**
 * What a sheet costs the owner that is in the price, that comes on top, and that is not needed.
 *
 * @param included a sheet in the price, foreseen
 * @param extra a sheet on top of those
 * @param credit what comes back for one in the price that is not needed
 * @param nuisance what one surprise sheet is worth to the owner in delay and worry
 */
public record IncludedPrices(
    @Column(
            value = "included_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "a foreseen sheet, 96 for instance")
        Figure<Per<Money, Sheets>> included,
    @Column(
            value = "extra_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "a scattered sheet, 117 for instance")
        Figure<Per<Money, Sheets>> extra,
    @Column(
            value = "credit_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "0 where nothing comes back, 80 for instance")
        Figure<Per<Money, Sheets>> credit,
    @Column(
            value = "nuisance_usd",
            unit = "$/sheet",
            least = 0,
            most = 10_000,
            rule = "25 for instance, 0 for none")
        Figure<Per<Money, Sheets>> nuisance) {

  private static final Columns COLUMNS = Columns.of(IncludedPrices.class);

  public IncludedPrices {
    included = COLUMNS.let("included", included);
    extra = COLUMNS.let("extra", extra);
    credit = COLUMNS.let("credit", credit);
    nuisance = COLUMNS.let("nuisance", nuisance);
  }

  /** A sheet in the price; the other prices are still to be said. */
  public static IncludedPrices included(Figure<Per<Money, Sheets>> each) {
    return new IncludedPrices(each, null, null, null);
  }

  public IncludedPrices extra(Figure<Per<Money, Sheets>> each) {
    return new IncludedPrices(included, each, credit, nuisance);
  }

  public IncludedPrices credit(Figure<Per<Money, Sheets>> each) {
    return new IncludedPrices(included, extra, each, nuisance);
  }

  public IncludedPrices nuisance(Figure<Per<Money, Sheets>> each) {
    return new IncludedPrices(included, extra, credit, each);
  }
}
