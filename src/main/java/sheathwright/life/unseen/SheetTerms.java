package sheathwright.life.unseen;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.price.OfficeFields;

/**
 * What deck sheets sell for in a job and what they cost the firm with its overhead, those in the
 * price and those on top.
 *
 * @param included sheets in the price
 * @param price of one of them
 * @param extra price of one on top
 * @param credit what comes back for one that is not needed
 * @param foreseen cost of one that was foreseen
 * @param scattered cost of one that is found on the day
 */
record SheetTerms(
    Figure<Sheets> included,
    Figure<Per<Money, Sheets>> price,
    Figure<Per<Money, Sheets>> extra,
    Figure<Per<Money, Sheets>> credit,
    Figure<Per<Money, Sheets>> foreseen,
    Figure<Per<Money, Sheets>> scattered) {

  private static final Figure<Sheets> NONE = Figure.of(0, Units.SHEET);
  private static final Source WITH_OVERHEAD = Source.derived("direct cost with overhead");

  static SheetTerms of(Estimate estimate) {
    Figure<Ratio> overhead = estimate.job().rateBook().fact(OfficeFields.OVERHEAD);
    return new SheetTerms(
        estimate.plannedSheets(),
        estimate.plannedSheet().quoted(),
        estimate.extraSheet().quoted(),
        estimate.quote().credit(),
        cost("foreseen", estimate.plannedSheet().direct(), overhead),
        cost("scattered", estimate.extraSheet().direct(), overhead));
  }

  private static Figure<Per<Money, Sheets>> cost(
      String kind, Figure<Per<Money, Sheets>> direct, Figure<Ratio> overhead) {
    return direct
        .times(Figure.of(1, Units.RATIO).plus(overhead))
        .as(kind + "_sheet_cost_usd", Units.USD_PER_SHEET, WITH_OVERHEAD);
  }

  /** What the owner pays for the deck if it takes so many sheets. */
  Figure<Money> paid(Figure<Sheets> taken) {
    Figure<?> back = credit.times(included.minus(taken).max(NONE));
    return price
        .times(included)
        .in(Units.USD)
        .minus(back)
        .plus(extra.times(taken.minus(included).max(NONE)));
  }

  /** What so many cost the firm, if those in the price are such as were foreseen. */
  Figure<Money> costForeseen(Figure<Sheets> taken) {
    return foreseen
        .times(taken.min(included))
        .in(Units.USD)
        .plus(scattered.times(taken.minus(included).max(NONE)));
  }

  /** What so many cost the firm, if all turn out scattered. */
  Figure<Money> costScattered(Figure<Sheets> taken) {
    return scattered.times(taken).in(Units.USD);
  }
}
