package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.Estimate.Tie;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;

/**
 * What is paid when. What a total comes to beyond the agreement is added to the last payment. What
 * it falls short of it is taken off the last one, then off the one before it and so on, each down
 * to what was paid of it; what is left then goes back to the owner. So no payment is less than
 * nothing, and what was paid never moves.
 */
public final class Payments {

  /**
   * One payment.
   *
   * @param stage its name
   * @param when it is due, in words
   * @param agreed as it was agreed
   * @param amount as it is now
   * @param paidOn the day; empty while it is not paid
   * @param paid so much of it
   */
  public record Payment(
      String stage,
      String when,
      Figure<Money> agreed,
      Figure<Money> amount,
      String paidOn,
      Figure<Money> paid) {

    private Payment with(Figure<Money> other) {
      return new Payment(stage, when, agreed, other, paidOn, paid);
    }
  }

  private static final String GOES_BACK = "We owe you";

  private final List<Payment> list;
  private final Figure<Money> total;
  private final Roll roll;

  /**
   * The payments of an agreement after changes.
   *
   * @param rows of the table {@code stages}, for when each is due and what was paid
   * @param total what all of it comes to now
   */
  public static Payments of(Agreement agreement, List<Row> rows, Figure<Money> total) {
    Map<String, Row> byName =
        rows.stream()
            .collect(
                Collectors.toMap(
                    row -> row.of(AgreedFields.STAGE).value(), row -> row, (one, two) -> one));
    List<Payment> list = new ArrayList<>();
    for (AgreedStage stage : agreement.stages()) {
      list.add(payment(list.size() + 1, stage, Optional.ofNullable(byName.get(stage.name()))));
    }
    return new Payments(withTotal(list, total), total);
  }

  /** A payment as it was agreed. */
  private static Payment payment(int number, AgreedStage stage, Optional<Row> row) {
    return new Payment(
        stage.name(),
        row.map(told -> told.of(AgreedFields.WHEN).value()).orElse(""),
        stage.amount(),
        stage.amount(),
        row.flatMap(told -> told.read(AgreedFields.PAID_ON)).map(Choice::value).orElse(""),
        row.filter(told -> told.has(AgreedFields.PAID))
            .map(told -> Agreement.frozen(told, AgreedFields.PAID, "paid_" + number + "_usd"))
            .orElse(OrderLine.NOTHING));
  }

  /** The same payments, which come to a total. */
  private static List<Payment> withTotal(List<Payment> agreed, Figure<Money> total) {
    Figure<Money> more =
        total.minus(
            OrderLine.together(agreed.stream().map(Payment::agreed).toList(), OrderLine.NOTHING));
    Figure<Money> less =
        OrderLine.NOTHING.minus(more).max(OrderLine.NOTHING).as("payments_fall_by_usd", Units.USD);
    LinkedList<Payment> all = new LinkedList<>();
    Figure<Money> open = OrderLine.NOTHING;
    for (int i = agreed.size() - 1; i >= 0; i--) {
      Payment payment = agreed.get(i);
      Figure<Money> here = payment.agreed().minus(payment.agreed().min(payment.paid()));
      Figure<Money> off = less.minus(open).max(OrderLine.NOTHING).min(here);
      Figure<Money> amount = payment.agreed().minus(off);
      if (all.isEmpty()) {
        amount = amount.plus(more.max(OrderLine.NOTHING));
      }
      all.addFirst(payment.with(amount.toCents().as("payment_now_usd", Units.USD)));
      open = open.plus(here);
    }
    Figure<Money> back = open.minus(less).min(OrderLine.NOTHING).toCents();
    if (back.value() < 0) {
      all.add(
          new Payment(
              GOES_BACK,
              "with the last invoice",
              OrderLine.NOTHING,
              back.as("goes_back_usd", Units.USD),
              "",
              OrderLine.NOTHING));
    }
    return all;
  }

  private Payments(List<Payment> list, Figure<Money> total) {
    this.list = List.copyOf(list);
    this.total = total;
    roll =
        Roll.of(
            "payments",
            "the payments",
            list,
            Roll.<Payment>column("stage", payment -> Choice.literal(payment.stage())),
            Roll.column("when", payment -> Choice.literal(payment.when())),
            Roll.column("agreed_usd", Payment::agreed),
            Roll.column("amount_usd", Payment::amount),
            Roll.column("paid_on", payment -> Choice.literal(payment.paidOn())),
            Roll.column("paid_usd", Payment::paid));
  }

  /**
   * What each payment is of a total that is being agreed: its dollars, or its part to the cent; the
   * last takes the rest.
   *
   * @throws ProblemsException if a payment says neither or both, a name appears twice, or they do
   *     not come to the total
   */
  static List<AgreedStage> agreed(List<Row> rows, Figure<Money> total) {
    RowProblems wrong = new RowProblems();
    Set<String> seen = new HashSet<>();
    List<Figure<Money>> given = new ArrayList<>();
    for (Row row : rows) {
      String name = row.of(AgreedFields.STAGE).value();
      if (!seen.add(name)) {
        wrong.add(JobTable.STAGES, row, AgreedFields.STAGE, "\"" + name + "\" appears twice");
      }
      if (row.has(AgreedFields.PART) == row.has(AgreedFields.USD)) {
        wrong.add(
            JobTable.STAGES,
            row,
            AgreedFields.PART,
            "part_pct and usd are %s; give one of the two, such as part_pct 10 or usd 1000.00"
                .formatted(row.has(AgreedFields.PART) ? "both given" : "both blank"));
      }
      given.add(
          row.has(AgreedFields.USD)
              ? row.of(AgreedFields.USD)
              : row.has(AgreedFields.PART)
                  ? total.times(row.of(AgreedFields.PART)).in(Units.USD).toCents()
                  : OrderLine.NOTHING);
    }
    if (rows.isEmpty()) {
      wrong.add(
          JobTable.STAGES, "there is no payment; say when the price is paid, one line a payment");
    }
    wrong.raise();
    double sum = given.stream().mapToDouble(Figure::value).sum();
    long parts = rows.stream().filter(row -> row.has(AgreedFields.PART)).count();
    if (Math.abs(sum - total.value()) > 0.001 + 0.005 * parts) {
      wrong.add(
          JobTable.STAGES,
          "the payments come to %s, and the price is %s; change the last one to %s"
              .formatted(
                  Shown.with(Units.USD, sum),
                  total,
                  Shown.with(
                      Units.USD, total.value() - sum + given.get(given.size() - 1).value())));
    }
    wrong.raise();
    List<Figure<Money>> amounts = withLast(given, total);
    List<AgreedStage> stages = new ArrayList<>();
    for (Row row : rows) {
      stages.add(new AgreedStage(row.of(AgreedFields.STAGE).value(), amounts.get(stages.size())));
    }
    return stages;
  }

  /** The same amounts, but the last, which takes the rest. */
  private static List<Figure<Money>> withLast(List<Figure<Money>> amounts, Figure<Money> total) {
    List<Figure<Money>> all = new ArrayList<>();
    Figure<Money> rest = total;
    for (Figure<Money> amount : amounts.subList(0, Math.max(0, amounts.size() - 1))) {
      all.add(amount);
      rest = rest.minus(amount);
    }
    if (!amounts.isEmpty()) {
      all.add(rest.toCents().as("last_payment_usd", Units.USD));
    }
    return all;
  }

  /** The payments, in their order. */
  public List<Payment> list() {
    return list;
  }

  /** The same as a list with one line a payment. */
  public Roll roll() {
    return roll;
  }

  /** What was paid so far. */
  public Figure<Money> paid() {
    return sum("paid_usd").as("paid_usd", Units.USD);
  }

  /** What is still to be paid. */
  public Figure<Money> due() {
    return total.minus(paid()).toCents().as("due_usd", Units.USD);
  }

  private Figure<Money> sum(String column) {
    return list.isEmpty() ? OrderLine.NOTHING : roll.sum(column, Units.USD);
  }

  /** That they come to the total. */
  public Tie tie() {
    return new Tie(
        "The payments add up to the total, to the cent", Same.money(sum("amount_usd"), total));
  }
}
