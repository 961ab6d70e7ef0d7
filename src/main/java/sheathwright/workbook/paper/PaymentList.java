package sheathwright.workbook.paper;

import java.util.List;
import sheathwright.figure.Units;
import sheathwright.life.bill.Payments;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/** What is paid when, as it was agreed and as it is now. */
final class PaymentList {

  private PaymentList() {}

  static void write(Tab tab, Payments payments) {
    tab.heading("Payments");
    tab.list(
        payments.roll(),
        List.of("Payment", "Due", "As agreed", "Now", "Paid on", "Paid"),
        Sections.units(null, null, Units.USD, Units.USD, null, Units.USD));
  }
}
