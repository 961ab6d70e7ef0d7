package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Facts;
import sheathwright.life.bill.Leak;
import sheathwright.life.record.DeckLeak;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * What the work on the deck cost by the crew's log against what it sold for, and so what was given
 * away: for the office alone.
 */
final class LeakPage {

  private LeakPage() {}

  /** Writes the page, if the job was agreed and its crew kept a log. */
  static void write(Book book, Estimate estimate, String subtitle) {
    DeckLeak.of(estimate)
        .ifPresent(
            leak ->
                write(
                    Sections.titled(
                        book.tab("Cost against sold", 46, 12, 12, 14, 14, 14), subtitle),
                    estimate.job().rateBook(),
                    leak));
  }

  private static void write(Tab tab, Facts rates, Leak leak) {
    tab.heading("The deck, by the crew's log");
    tab.note(
        "Cost is the hours of the log at the office's wage, with material as it is priced today; sold is what the owner pays: the agreed line, approved orders, less what comes back.");
    tab.list(
        leak.roll(),
        List.of("What", "How many", "Hours", "Cost", "Sold for", "Cost beyond that"),
        Sections.units(null, Units.RATIO, Units.HOUR, Units.USD, Units.USD, Units.USD));
    tab.heading("What was given away");
    Figure<Money> givenAway =
        leak.givenAway(rates.fact(OfficeFields.OVERHEAD), rates.fact(OfficeFields.MARGIN));
    tab.entry(
        "Direct cost of the work on the deck",
        leak.cost().toCents().as("deck_cost_to_cents_usd", Units.USD),
        "");
    tab.entry("What it sold for", leak.sold(), "");
    tab.total(
        "Given away",
        givenAway.toCents().as("given_away_to_cents_usd", Units.USD),
        "what the same work asks for at the office's overhead and margin, less what it sold for; less than nothing if more was gained");
    if (!leak.others().isEmpty()) {
      tab.note("Not compared, other tasks of the log: " + String.join(", ", leak.others()) + ".");
    }
  }
}
