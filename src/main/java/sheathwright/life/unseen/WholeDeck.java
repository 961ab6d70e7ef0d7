package sheathwright.life.unseen;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.price.OpenFields;
import sheathwright.job.table.Facts;
import sheathwright.pricing.Disposal;
import sheathwright.pricing.SheetMaterial;
import sheathwright.pricing.UnitPrices;

/**
 * What it costs to lay a whole deck anew: every sheet of the layout, of which nothing is wasted
 * that the layout does not cut away, at the hours of such work; and the old sheets hauled away.
 */
final class WholeDeck {

  private static final Figure<Per<Force, Sheets>> NOTHING_HAULED =
      Figure.of(0, Units.POUNDS_PER_SHEET);

  private WholeDeck() {}

  /** Direct cost for each sheet of the old deck by its area, beside one that is patched. */
  static Figure<Per<Money, Sheets>> costOfASheet(Estimate estimate) {
    Job job = estimate.job();
    Facts rates = job.rateBook();
    Facts prices = job.priceBook();
    Figure<Per<Money, Sheets>> extras =
        prices.knows(OfficeFields.SHEET_EXTRAS_PRICE)
            ? prices.fact(OfficeFields.SHEET_EXTRAS_PRICE)
            : Figure.of(0, Units.USD_PER_SHEET);
    Figure<Per<Money, Sheets>> laid =
        UnitPrices.sheetUnitPrice(
                SheetMaterial.sheet(prices.fact(OfficeFields.SHEET_PRICE))
                    .waste(Figure.of(0, Units.PERCENT))
                    .nails(estimate.nailsInASheet(), prices.fact(OfficeFields.NAIL_PRICE))
                    .extras(extras),
                hours(rates),
                Disposal.of(NOTHING_HAULED, rates.fact(OfficeFields.DISPOSAL)),
                job.rates())
            .direct();
    Figure<Money> hauled =
        estimate
            .deckSheets()
            .times(rates.fact(OfficeFields.SHEET_DISPOSAL))
            .times(rates.fact(OfficeFields.DISPOSAL))
            .in(Units.USD);
    return estimate
        .deck()
        .layout()
        .sheets()
        .times(laid)
        .in(Units.USD)
        .plus(hauled)
        .dividedBy(estimate.deckSheets())
        .as("redeck_usd", Units.USD_PER_SHEET);
  }

  private static Figure<Per<Time, Sheets>> hours(Facts rates) {
    return rates.knows(OpenFields.REDECK_HOURS)
        ? rates.fact(OpenFields.REDECK_HOURS)
        : rates.fact(OfficeFields.PLANNED_SHEET_HOURS);
  }
}
