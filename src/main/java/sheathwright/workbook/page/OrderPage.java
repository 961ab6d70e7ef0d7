package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Roll;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.price.SupplyFields;
import sheathwright.job.table.Field;
import sheathwright.life.supply.Supply;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/** The order, one page, as a supplier reads it: what to buy and nothing of what it costs. */
final class OrderPage {

  private static final List<String> HEADINGS =
      List.of("What", "Sold as", "To buy", "Needed", "Overage");
  private static final List<Unit<?>> UNITS =
      Sections.units(null, null, Units.RATIO, Units.RATIO, Units.RATIO);

  private OrderPage() {}

  static Tab tab(Book book, String subtitle) {
    return Sections.titled(book.tab("Order", 46, 16, 12, 12, 12), subtitle).onOnePage();
  }

  static void write(Tab tab, Estimate estimate, Supply supply) {
    Job job = estimate.job();
    tab.heading("The order");
    tab.link("For the job", job.fact(JobFields.JOB_NAME), "");
    tab.link("Ordered by", job.fact(JobFields.PREPARED_BY), "");
    linked(tab, job, SupplyFields.DELIVER_TO);
    tab.skip(1);
    tab.listBut(Supply.NOT_NEEDED, supply.order(), HEADINGS, UNITS);
    tab.note(
        "To buy is what is needed and the overage, in whole packs. Lumber is cut from a list and has no overage.");
    supply.waiting().ifPresent(waiting -> waiting(tab, estimate, waiting));
    linked(tab, job, SupplyFields.RETURNS);
    tab.heading("Where the sheets come from");
    tab.shown("In the price", supply.sheets().planned(), "");
    tab.shown(
        "For the patches that are marked",
        supply.sheets().patched(),
        "ordered alone once the deck is opened; before, the greater of the two");
  }

  private static void waiting(Tab tab, Estimate estimate, Roll waiting) {
    tab.heading("After the engineer's decision");
    tab.note("Not in the order. It is bought when whoever is named here has decided.");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    tab.listBut(Supply.NOT_NEEDED, waiting, HEADINGS, UNITS);
  }

  private static void linked(Tab tab, Job job, Field<sheathwright.figure.Choice<String>> field) {
    if (job.knows(field)) {
      tab.link(field.label(), job.fact(field), "");
    }
  }
}
