package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.Reconciliation;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/**
 * The last bill of a job for the owner: what was agreed, each option and change order, what comes
 * back, what was paid, what is due; and where every mark went.
 */
public final class InvoiceBook {

  private final Estimate estimate;
  private final Invoice invoice;
  private final Reconciliation reconciliation;
  private final Paper paper;

  private InvoiceBook(
      Estimate estimate, Invoice invoice, Reconciliation reconciliation, String number, String on) {
    this.estimate = estimate;
    this.invoice = invoice;
    this.reconciliation = reconciliation;
    paper = new Paper(estimate, "Invoice %s, %s".formatted(number, on));
  }

  /**
   * The workbook of an invoice.
   *
   * @param number of the document
   * @param on the day on which it is written
   */
  public static InvoiceBook of(
      Estimate estimate, Invoice invoice, Reconciliation reconciliation, String number, String on) {
    return new InvoiceBook(estimate, invoice, reconciliation, number, on);
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return paper.bytes(this::pages, List.of(invoice.total(), invoice.due()));
  }

  private List<Estimate.Tie> pages() {
    Tab tab = paper.page("Invoice", 40, 12, 14, 14, 14, 14);
    tab.heading("What it is for");
    tab.list(
        invoice.roll(),
        List.of("For", "How many", "Unit", "Each", "Amount"),
        Sections.units(null, Units.RATIO, null, Units.USD, Units.USD));
    tab.listTotal("Total", invoice.total(), 4);
    PaymentList.write(tab, invoice.payments());
    return new ArrayList<>(reconciliation.ties());
  }
}
