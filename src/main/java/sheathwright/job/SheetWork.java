package sheathwright.job;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Refusal;
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
 * @param hasSheets whether any of the deck is sheets
 * @param boards feet of board that the deck could take, where any of it is boards
 * @param lifted sheets that come up for it and go down again
 */
record SheetWork(
    Figure<Sheets> planned,
    Figure<Sheets> atWorst,
    Figure<Per<Nails, Sheets>> nails,
    UnitPrice plannedPrice,
    UnitPrice extraPrice,
    Optional<Leveling> leveling,
    boolean hasSheets,
    Optional<Figure<Length>> boards,
    Optional<Figure<Pieces>> lifted) {

  /**
   * Refuses more back for a sheet than it costs. Once agreed, the table of what was agreed is held
   * against itself.
   */
  void hold(Job job, Refusals refusals) {
    Figure<Per<Money, Sheets>> credit = job.fact(JobFields.CREDIT);
    boolean isPriced = plannedPrice.quoted().refusal().isEmpty();
    if (isPriced
        && job.lines(JobTable.AGREED).isEmpty()
        && credit.value() > plannedPrice.quoted().value()) {
      refusals.add(
          new Refusal(
              "credit_usd: %s is given, but a sheet in the price costs %s; no more comes back than was paid: give at most that"
                  .formatted(credit, plannedPrice.quoted()),
              false,
              List.of(credit)));
    }
  }
}
