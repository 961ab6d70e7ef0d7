package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/**
 * The last bill of a job: what was agreed, the options chosen, each approved change order, what
 * comes back for what was not needed, what was paid, and what is due.
 */
public final class Invoice {

  /**
   * One line.
   *
   * @param what it is for
   * @param quantity how many
   * @param unit of what
   * @param price of each
   * @param amount what it comes to
   */
  public record Line(
      String what, Figure<?> quantity, String unit, Figure<Money> price, Figure<Money> amount) {}

  private static final Figure<?> ONCE = Figure.of(1, Units.RATIO);

  private final Accounts accounts;
  private final List<Line> lines;
  private final Roll roll;
  private final Figure<Money> total;
  private final Payments payments;

  /**
   * The bill of what was agreed, ordered and found.
   *
   * @param stages the rows of the table of payments
   */
  public static Invoice of(Accounts accounts, List<Row> stages) {
    return new Invoice(accounts, stages);
  }

  private Invoice(Accounts accounts, List<Row> stages) {
    this.accounts = accounts;
    lines = linesOf(accounts);
    roll =
        Roll.of(
            "invoice",
            "the lines of the invoice",
            lines,
            Roll.<Line>column("what", line -> Choice.literal(line.what())),
            Roll.column("quantity", Line::quantity),
            Roll.column("unit", line -> Choice.literal(line.unit())),
            Roll.column("price_usd", Line::price),
            Roll.column("amount_usd", Line::amount));
    total = roll.sum("amount_usd", Units.USD).toCents().as("invoice_total_usd", Units.USD);
    payments = Payments.of(accounts.agreement(), stages, total);
  }

  private static List<Line> linesOf(Accounts accounts) {
    List<Line> all = new ArrayList<>();
    for (AgreedSum sum : accounts.agreement().lines()) {
      all.add(new Line(sum.what(), sum.quantity(), sum.unit(), sum.each(), sum.amount()));
    }
    for (AgreedSum sum : accounts.agreement().options()) {
      String what = "Chosen: " + sum.what();
      all.add(new Line(what, sum.quantity(), sum.unit(), sum.each(), sum.amount()));
    }
    for (Order order : accounts.orders().that(OrderStatus.APPROVED)) {
      String what =
          "Change order %s, approved %s"
              .formatted(order.number(), Moment.spoken(order.approvedOn()));
      all.add(new Line(what, ONCE, "order", order.sum(), order.sum()));
    }
    for (ItemAccount item : accounts.items()) {
      if (item.agreed().credit().value() > 0) {
        Figure<Money> back = item.agreed().credit().times(Figure.of(-1, Units.RATIO)).in(Units.USD);
        all.add(
            new Line(
                "Not needed: " + item.item().label(),
                item.unused(),
                item.item().unit(),
                back,
                item.unused().times(back).in(Units.USD).toCents()));
      }
    }
    return List.copyOf(all);
  }

  /** What it was worked out from. */
  public Accounts accounts() {
    return accounts;
  }

  /** Its lines. */
  public List<Line> lines() {
    return lines;
  }

  /** The same as a list. */
  public Roll roll() {
    return roll;
  }

  /** What it comes to. */
  public Figure<Money> total() {
    return total;
  }

  /** The payments, with what was paid. */
  public Payments payments() {
    return payments;
  }

  /** What is still to be paid; less than nothing if something goes back. */
  public Figure<Money> due() {
    return payments.due();
  }

  /**
   * What must hold of it: its total once more, from the agreed total, the orders' own sums and the
   * credits.
   */
  public List<Tie> ties() {
    return List.of(
        new Tie(
            "The invoice is what was agreed, what was approved since, less what comes back",
            Same.money(total, sum(accounts))),
        payments.tie());
  }

  /** What was agreed, what was approved since, less what comes back. */
  static Figure<Money> sum(Accounts accounts) {
    Figure<Money> sum = accounts.agreement().total();
    for (Order order : accounts.orders().that(OrderStatus.APPROVED)) {
      sum = sum.plus(order.usd());
    }
    for (ItemAccount item : accounts.items()) {
      sum = sum.minus(item.credit());
    }
    return sum;
  }
}
