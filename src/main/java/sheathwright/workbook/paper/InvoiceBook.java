package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.AgreedSum;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.Reconciliation;
import sheathwright.life.record.Issue;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.Letterhead;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Told;

/**
 * The last bill of a job for the owner: what was agreed, each option and change order, what comes
 * back, what was paid, what is due; and where every mark went.
 */
public final class InvoiceBook {

  private static final int AMOUNT = 4;

  /** One line of the bill; its amount follows from how many and from the price of each. */
  private record Line(
      String what, Figure<Ratio> quantity, String unit, Figure<Money> price, Figure<Money> amount) {

    static Line of(String what, Figure<Ratio> quantity, String unit, Figure<Money> price) {
      Figure<Ratio> many = Told.of("quantity", quantity);
      return new Line(what, many, unit, price, many.times(price).in(Units.USD).toCents());
    }
  }

  private final Estimate estimate;
  private final Invoice invoice;
  private final Reconciliation reconciliation;
  private final Paper paper;

  private InvoiceBook(
      Estimate estimate, Invoice invoice, Reconciliation reconciliation, String number, Moment on) {
    this.estimate = estimate;
    this.invoice = invoice;
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
    return paper.bytes(this::pages);
  }

  private void pages() {
    Accounts accounts = invoice.accounts();
    Tab front = paper.page("Invoice", 36, 22, 13, 14, 16, 13);
    Places places = Places.of(estimate);
    OrdersPage orders = new OrdersPage(paper, estimate.job(), places);
    ReconciliationPage marks = new ReconciliationPage(paper, places, accounts, reconciliation);
    orders.write(accounts.orders().all(), accounts.agreement().since());
    OnceMore again = new OnceMore();
    int state = front(front, orders, again);
    orders.sums().forEach((number, sum) -> again.amount("Change order " + number, sum));
    marks.write(again);
    front.value(state, 0, Paper.told(again, marks.sheaf()), Part.NOTE);
  }

  /** Writes the page that is paid from; gives the line that is left free at its end. */
  private int front(Tab tab, OrdersPage orders, OnceMore again) {
    Letter letter = Letter.on(tab);
    Letterhead.write(letter, estimate.job().firm());
    int top = tab.line();
    tab.heading("Who and where");
    for (Field<Choice<String>> fact :
        List.of(JobFields.CUSTOMER, JobFields.SITE, JobFields.JOB_NAME, JobFields.PREPARED_BY)) {
      Paper.fact(tab, fact.label(), estimate.job().fact(fact).value());
    }
    Roll roll =
        Roll.of(
            "invoice",
            "the lines of the invoice",
            lines(orders),
            Paper.<Line>words("what", Line::what),
            Roll.column("quantity", Line::quantity),
            Paper.words("unit", line -> Shown.many(line.quantity().value(), line.unit())),
            Roll.column("price_usd", Line::price),
            Roll.column("amount_usd", Line::amount));
    Figure<Money> total =
        roll.sum("amount_usd", Units.USD).toCents().as("invoice_total_usd", Units.USD);
    tab.heading("What it is for");
    tab.list(
        roll,
        List.of("For", "How many", "Of", "Each", "Amount"),
        Sections.units(null, Units.RATIO, null, Units.USD, Units.USD));
    tab.listTotal("Total", total, AMOUNT);
    again.amount("Total", total);
    PaymentList payments = PaymentList.of(invoice.payments(), total);
    payments.write(tab);
    Figure<Money> due = payments.due();
    tab.total(due.value() < 0 ? "Due now; less than nothing goes back" : "Due now", due, "");
    letter.figure(top, due.as("shown_due_usd", Units.USD), "due now");
    again.amount("Due now", due);
    payments.last().ifPresent(last -> again.amount("The last payment", last));
    return tab.line();
  }

  private List<Line> lines(OrdersPage orders) {
    Accounts accounts = invoice.accounts();
    List<Line> all = new ArrayList<>();
    accounts.agreement().lines().forEach(sum -> all.add(agreed(sum.what(), sum)));
    accounts.agreement().options().forEach(sum -> all.add(agreed("Chosen: " + sum.what(), sum)));
    for (Order order : accounts.orders().that(OrderStatus.APPROVED)) {
      all.add(
          Line.of(
              "Change order %s, approved %s"
                  .formatted(order.number(), Moment.spoken(order.approvedOn())),
              Figure.of(1, Units.RATIO),
              "order",
              orders.sums().get(order.number())));
    }
    for (ItemAccount item : accounts.items()) {
      credit(item).ifPresent(all::add);
    }
    return all;
  }

  private static Line agreed(String what, AgreedSum sum) {
    return Line.of(what, sum.quantity(), sum.unit(), Told.of("price_usd", sum.each()));
  }

  /** What comes back for those in the price that were not needed. */
  private static Optional<Line> credit(ItemAccount item) {
    Figure<Money> credit = item.agreed().credit();
    if (credit.value() <= 0 || item.unused().value() <= 0) {
      return Optional.empty();
    }
    Figure<Money> back = credit.times(Figure.of(-1, Units.RATIO)).in(Units.USD);
    return Optional.of(
        Line.of(
            "Not needed: " + item.item().label(),
            item.unused(),
            UnitWords.counted(item.item(), item.agreed().unit()),
            Told.of("price_usd", back)));
  }
}
