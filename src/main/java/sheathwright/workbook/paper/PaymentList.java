package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Payments;
import sheathwright.life.bill.Payments.Payment;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.page.Sections;
import sheathwright.workbook.told.Told;

/** What is paid when, as it was agreed and as it is now: the last payment takes what changed. */
final class PaymentList {

  private record Line(
      Payment payment, Figure<Money> agreed, Figure<Money> now, Figure<Money> paid) {}

  private final List<Line> lines = new ArrayList<>();
  private final Roll roll;
  private final Figure<Money> total;

  /**
   * The payments of a total.
   *
   * @param total as a page works it out
   */
  static PaymentList of(Payments payments, Figure<Money> total) {
    return new PaymentList(payments.list(), total);
  }

  private PaymentList(List<Payment> payments, Figure<Money> total) {
    this.total = total;
    Figure<Money> rest = total;
    for (Payment payment : payments) {
      Figure<Money> agreed = Told.of("agreed_usd", payment.agreed());
      boolean isLast = lines.size() == payments.size() - 1;
      Figure<Money> now =
          isLast
              ? rest.toCents().as("last_payment_usd", Units.USD)
              : agreed.as("payment_%s_usd".formatted(lines.size() + 1), Units.USD);
      lines.add(new Line(payment, agreed, now, Told.of("paid_usd", payment.paid())));
      rest = rest.minus(now);
    }
    roll =
        Roll.of(
            "payments",
            "the payments",
            lines,
            Paper.<Line>words("stage", line -> line.payment().stage()),
            Paper.words("when", line -> line.payment().when()),
            Roll.column("agreed_usd", Line::agreed),
            Roll.column("amount_usd", Line::now),
            Paper.words("paid_on", line -> Moment.spoken(line.payment().paidOn())),
            Roll.column("paid_usd", Line::paid));
  }

  void write(Tab tab) {
    if (!lines.isEmpty()) {
      tab.heading("Payments");
      tab.list(
          roll,
          List.of("Payment", "Due", "As agreed", "Now", "Paid on", "Paid"),
          Sections.units(null, null, Units.USD, Units.USD, null, Units.USD));
    }
  }

  /** What the last payment is by now. */
  Optional<Figure<Money>> last() {
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).now());
  }

  /** What is still to be paid. */
  Figure<Money> due() {
    Figure<Money> paid =
        lines.isEmpty() ? Figure.of(0, Units.USD) : roll.sum("paid_usd", Units.USD);
    return total.minus(paid).toCents().as("due_usd", Units.USD);
  }
}
