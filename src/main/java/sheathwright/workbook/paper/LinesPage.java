package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Payments;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** What each item of a change order comes to, the new total, and the payments. */
final class LinesPage {

  private static final int[] WIDTHS = {28, 12, 10, 9, 10, 10, 8, 8, 7, 8};
  private static final int AMOUNT = 9;

  private final Tab tab;
  private final NextOrder order;
  private final Payments payments;

  LinesPage(Tab tab, NextOrder order, Payments payments) {
    this.tab = tab;
    this.order = order;
    this.payments = payments;
  }

  static Tab tab(Paper paper) {
    return paper.page("What it comes to", WIDTHS);
  }

  void write() {
    AgreedList.write(tab, order.accounts().agreement());
    tab.heading("This change order");
    tab.list(
        order.roll(),
        List.of(
            "For",
            "Counted by",
            "Found",
            "Up to the ceiling",
            "In the price",
            "Due over all",
            "Earlier orders",
            "This order",
            "Each",
            "Amount"),
        Sections.units(
            null,
            null,
            Units.RATIO,
            Units.RATIO,
            Units.RATIO,
            Units.RATIO,
            Units.RATIO,
            Units.RATIO,
            Units.USD,
            Units.USD));
    tab.listTotal("This change order", order.sum(), AMOUNT);
    tab.heading("The new total");
    tab.list(order.totalRoll(), List.of("What", "Amount"), Sections.units(null, Units.USD));
    tab.listTotal("New total", order.newTotal(), 1);
    PaymentList.write(tab, payments);
  }

  /** That quantities times prices, to the cent, add up to what is asked. */
  Tie tie() {
    return new Tie(
        "Quantities times prices, to the cent, add up to this change order",
        order.sum().isTheSameAs(order.reckoned()));
  }
}
