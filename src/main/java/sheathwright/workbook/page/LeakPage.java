package sheathwright.workbook.page;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Row;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Leak;
import sheathwright.life.record.DeckLeak;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * What the work on the deck cost by the crew's log against what it sold for, and so what was given
 * away: for the office alone.
 */
final class LeakPage {

  private static final int BEYOND = 5;
  private static final int AMOUNT = 3;

  private final Tab tab;
  private final Estimate estimate;
  private final Accounts accounts;

  private LeakPage(Tab tab, Estimate estimate, Accounts accounts) {
    this.tab = tab;
    this.estimate = estimate;
    this.accounts = accounts;
  }

  /** Writes the page, if the job was agreed and its crew kept a log. */
  static void write(Book book, Estimate estimate, String subtitle, Optional<Accounts> agreed) {
    agreed
        .filter(any -> !estimate.job().lines(JobTable.LOG).isEmpty())
        .ifPresent(
            accounts -> {
              Tab tab =
                  Sections.titled(book.tab("Cost against sold", 46, 12, 12, 14, 14, 14), subtitle);
              new LeakPage(tab.onOnePage(), estimate, accounts).write();
            });
  }

  private void write() {
    Leak leak = DeckLeak.of(estimate, accounts);
    log();
    tab.heading("What the work on the deck cost and sold for");
    tab.note(
        "Cost is the hours of the log at the office's wage, with material as it is priced today; sold is what the owner pays: the agreed line, approved orders, less what comes back.");
    tab.list(
        leak.roll(),
        List.of("What", "How many", "Hours", "Cost", "Sold for", "Cost beyond that"),
        Sections.units(null, Units.RATIO, Units.HOUR, Units.USD, Units.USD, Units.USD));
    tab.listTotal("Cost beyond what it sold for", leak.total(), BEYOND);
    tab.note("Less than nothing is what the deck left for overhead and margin.");
    givenAway(leak);
    if (!leak.others().isEmpty()) {
      tab.note("Not compared, other tasks of the log: " + String.join(", ", leak.others()) + ".");
    }
    aboveTheCeiling();
  }

  private void log() {
    tab.heading("What the crew logged");
    tab.list(
        Roll.of(
            "log",
            "what the crew logged",
            estimate.job().lines(JobTable.LOG),
            Roll.<Row>column("task", row -> Choice.literal(row.of(OrderFields.TASK).value())),
            Roll.column("day", row -> Choice.literal(row.of(OrderFields.DAY).value())),
            Roll.column("quantity", row -> row.of(AgreedFields.QUANTITY)),
            Roll.column("hours_h", row -> row.of(OrderFields.HOURS))),
        List.of("Task", "Day", "How many", "Hours of everybody"),
        Sections.units(null, null, Units.RATIO, Units.HOUR));
  }

  private void givenAway(Leak leak) {
    Facts rates = estimate.job().rateBook();
    tab.heading("What was given away");
    tab.entry(
        "Direct cost of the work on the deck",
        leak.cost().toCents().as("deck_cost_to_cents_usd", Units.USD),
        "");
    tab.entry("What it sold for", leak.sold(), "");
    tab.link(OfficeFields.OVERHEAD.label(), rates.fact(OfficeFields.OVERHEAD), "");
    tab.link(OfficeFields.MARGIN.label(), rates.fact(OfficeFields.MARGIN), "");
    tab.total(
        "Given away",
        DeckLeak.givenAway(estimate, leak).toCents().as("given_away_to_cents_usd", Units.USD),
        "what the same work asks for at the office's overhead and margin, less what it sold for; less than nothing if more was gained");
  }

  private void aboveTheCeiling() {
    List<ItemAccount> free = accounts.givenAway();
    if (free.isEmpty()) {
      return;
    }
    tab.heading("Done above the agreed ceiling, at no charge");
    Roll roll =
        Roll.of(
            "above_the_ceiling",
            "what was done above the agreed ceiling",
            free,
            Roll.<ItemAccount>column("item", item -> Choice.literal(item.item().label())),
            Roll.column("quantity", ItemAccount::uncharged),
            Roll.column("price_usd", item -> item.agreed().price()),
            Roll.column("amount_usd", ItemAccount::unchargedAmount));
    tab.list(
        roll,
        List.of("What", "How many", "Each", "At the agreed price"),
        Sections.units(null, Units.RATIO, Units.USD, Units.USD));
    tab.listTotal(
        "Given away above the ceiling",
        roll.sum("amount_usd", Units.USD).as("above_the_ceiling_usd", Units.USD),
        AMOUNT);
    tab.note("Its cost is in the list above, where the log has it; it sold for nothing.");
  }
}
