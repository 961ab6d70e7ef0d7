package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Payments;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/**
 * The second page of a change order: one line a mark, then what each item comes to, the new total
 * and the payments.
 */
final class LinesPage {

  private static final int[] WIDTHS = {32, 26, 12, 12, 14, 12};

  private final Tab tab;
  private final NextOrder order;
  private final Photos photos;

  LinesPage(Tab tab, NextOrder order, Photos photos) {
    this.tab = tab;
    this.order = order;
    this.photos = photos;
  }

  static Tab tab(Paper paper) {
    return paper.page("What and why", WIDTHS);
  }

  void write(Payments payments) {
    tab.heading("What it comes to");
    tab.list(
        order.roll().only(List.of("item", "unit", "quantity", "price_usd", "amount_usd")),
        List.of("For", "Counted by", "How many", "Each", "Amount"),
        Sections.units(null, null, Units.RATIO, Units.USD, Units.USD));
    tab.listTotal("This change order", order.sum(), 4);
    tab.heading("The new total");
    tab.list(order.totalRoll(), List.of("What", "Amount"), Sections.units(null, Units.USD));
    tab.listTotal("New total", order.newTotal(), 1);
    PaymentList.write(tab, payments);
  }
}
