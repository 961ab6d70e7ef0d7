package sheathwright.job;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Refusal;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.table.Row;
import sheathwright.pricing.UnitPrice;

/**
 * What is quoted and ordered of a deck: its sheets, their nails and prices, and the rafters'
 * leveling.
 *
 * @param planned the sheets that are in the price
 * @param atWorst all that the deck could take
 * @param nails in each where it takes the most, near the edges of the roof
 * @param plannedPrice of a planned sheet
 * @param extraPrice of one more
 * @param leveling of the rafters, if the job levels them
 */
record SheetWork(
    Figure<Sheets> planned,
    Figure<Sheets> atWorst,
    Figure<Per<Nails, Sheets>> nails,
    UnitPrice plannedPrice,
    UnitPrice extraPrice,
    Optional<Leveling> leveling) {

  /**
   * Refuses what no quote means: more sheets in the price than the old deck has, more back for one
   * than it costs. Once agreed, what was agreed is held against the old deck alone.
   */
  void hold(Job job, Refusals refusals) {
    List<Row> agreed = job.lines(JobTable.AGREED);
    if (agreed.isEmpty()) {
      isOnTheMap(planned, "planned_sheets: %s is given", refusals);
      Figure<Per<Money, Sheets>> credit = job.fact(JobFields.CREDIT);
      boolean isPriced = plannedPrice.quoted().refusal().isEmpty();
      if (isPriced && credit.value() > plannedPrice.quoted().value()) {
        refusals.add(
            new Refusal(
                "credit_usd: %s is given, but a sheet in the price costs %s; no more comes back than was paid: give at most that"
                    .formatted(credit, plannedPrice.quoted()),
                false,
                List.of(credit)));
      }
    }
    agreed.stream()
        .filter(row -> row.of(AgreedFields.ITEM).value().equals(Item.SHEET.word()))
        .filter(row -> row.has(AgreedFields.INCLUDED))
        .forEach(row -> isOnTheMap(row.of(AgreedFields.INCLUDED), "%s is given", refusals));
  }

  private void isOnTheMap(Figure<?> included, String given, Refusals refusals) {
    if (included.value() > atWorst.value()) {
      refusals.add(
          new Refusal(
              given.formatted(included.plain())
                  + ", but the old deck has %s sheets by the bill rule; no more is ever found: give at most that"
                      .formatted(atWorst.plain()),
              false,
              List.of(included)));
    }
  }
}
