package sheathwright.life.record;

import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.ApprovedHow;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Agreement;
import sheathwright.life.bill.CrewDay;
import sheathwright.life.bill.ItemHours;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.Orders;
import sheathwright.life.bill.PreAgreed;
import sheathwright.life.found.FoundWork;

/** What a job's tables come to on the bill. */
final class Bill {

  private Bill() {}

  /** What was agreed, ordered and found. */
  static Accounts accounts(Estimate estimate) {
    Job job = estimate.job();
    return Accounts.of(agreement(job), orders(job), FoundWork.of(estimate).list());
  }

  /** What would be ordered now. */
  static NextOrder next(Estimate estimate) {
    Job job = estimate.job();
    return NextOrder.of(
        agreement(job),
        orders(job),
        FoundWork.of(estimate).list(),
        CrewDay.of(job),
        ItemHours.of(job));
  }

  /**
   * Why an order that was approved as pre-agreed was not: nothing was, or all of them together are
   * more than was.
   */
  static Optional<String> beyondPreAgreed(Accounts accounts) {
    Figure<Ratio> sheets = Figure.of(0, Units.RATIO);
    Figure<Money> sum = Figure.of(0, Units.USD);
    for (Order order : accounts.orders().that(OrderStatus.APPROVED)) {
      if (order.approvedHow().equals(Optional.of(ApprovedHow.PRE_AGREED))) {
        sheets = sheets.plus(order.quantity(Item.SHEET));
        sum = sum.plus(order.sum());
        Optional<PreAgreed> given = accounts.agreement().preAgreed();
        boolean isWithin = given.isPresent() && given.get().covers(sheets, sum).holds();
        if (!isWithin) {
          return Optional.of(
              "orders.csv says of change order %s that it was pre-agreed, but %s; let the owner approve it: signed or e-mail"
                  .formatted(
                      order.number(),
                      given.isEmpty()
                          ? "nothing was pre-agreed"
                          : "with it %s sheets and %s are more than was"
                              .formatted(sheets.plain(), sum)));
        }
      }
    }
    return Optional.empty();
  }

  private static Agreement agreement(Job job) {
    return Agreement.of(job.lines(JobTable.AGREED));
  }

  private static Orders orders(Job job) {
    return Orders.of(job.lines(JobTable.ORDERS), job.lines(JobTable.ORDER_LINES));
  }
}
