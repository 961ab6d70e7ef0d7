package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.Reconciliation;
import sheathwright.life.record.Issue;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;

/**
 * The last bill of a job for the owner: what was agreed, each option and change order, what comes
 * back, what was paid, what is due; and where every mark went.
 */
public final class InvoiceBook {

  private static final int AMOUNT = 4;

  private final Estimate estimate;
  private final Invoice invoice;
  private final Figure<Money> due;
  private final Reconciliation reconciliation;
  private final Paper paper;

  private InvoiceBook(
      Estimate estimate, Invoice invoice, Reconciliation reconciliation, String number, Moment on) {
    this.estimate = estimate;
    this.invoice = invoice;
    due = invoice.due();
    this.reconciliation = reconciliation;
    paper =
        new Paper(estimate, "Invoice %s, %s".formatted(number, on.inWords()), Issue.INVOICE, on);
  }

  /**
   * The workbook of an invoice.
   *
   * @param number of the document
   * @param on when it is written
   */
  public static InvoiceBook of(
      Estimate estimate, Invoice invoice, Reconciliation reconciliation, String number, Moment on) {
    return new InvoiceBook(estimate, invoice, reconciliation, number, on);
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return paper.bytes(this::pages, List.of(invoice.total(), due));
  }

  private List<Estimate.Tie> pages() {
    Accounts accounts = invoice.accounts();
    Tab front = paper.page("Invoice", 40, 12, 13, 14, 14, 15);
    Tab orders = OrdersPage.tab(paper);
    ReconciliationPage marks =
        new ReconciliationPage(ReconciliationPage.tab(paper), accounts, reconciliation);
    Tab counts = CountPage.tab(paper);
    front(front);
    new OrdersPage(orders, estimate.job()).write(accounts.orders().all());
    CountPage.write(counts, accounts.items());
    marks.write();
    List<Estimate.Tie> ties = new ArrayList<>(reconciliation.ties());
    ties.addAll(marks.ties());
    return ties;
  }

  private void front(Tab tab) {
    tab.heading("For");
    for (Field<Choice<String>> fact :
        List.of(JobFields.CUSTOMER, JobFields.SITE, JobFields.JOB_NAME, JobFields.PREPARED_BY)) {
      Paper.fact(tab, fact.label(), estimate.job().fact(fact).value());
    }
    tab.heading("What it is for");
    tab.list(
        invoice.roll(),
        List.of("For", "How many", "Unit", "Each", "Amount"),
        Sections.units(null, Units.RATIO, null, Units.USD, Units.USD));
    tab.listTotal("Total", invoice.total(), AMOUNT);
    PaymentList.write(tab, invoice.payments());
    tab.total(due.value() < 0 ? "Due now; less than nothing goes back" : "Due now", due, "");
  }
}
