package sheathwright.life.record;

import java.util.Optional;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.MarkNames;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Agreement;
import sheathwright.life.bill.CrewDay;
import sheathwright.life.bill.ItemHours;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Orders;
import sheathwright.life.found.FoundWork;

/** What a job's tables come to on the bill. */
public final class Bill {

  private Bill() {}

  /** What was agreed, ordered and found; nothing while nothing is agreed. */
  public static Optional<Accounts> soFar(Estimate estimate) {
    return Optional.of(estimate)
        .filter(any -> !any.job().lines(JobTable.AGREED).isEmpty())
        .map(Bill::accounts);
  }

  /** What was agreed, ordered and found. */
  static Accounts accounts(Estimate estimate) {
    Job job = estimate.job();
    return Accounts.of(
        Agreement.of(job.lines(JobTable.AGREED), job.lines(JobTable.TALKS)),
        orders(job),
        FoundWork.of(estimate).list(),
        job.lines(JobTable.OPTIONS));
  }

  /** What would be ordered now. */
  static NextOrder next(Estimate estimate) {
    Job job = estimate.job();
    return NextOrder.of(accounts(estimate), CrewDay.of(job), ItemHours.of(job));
  }

  private static Orders orders(Job job) {
    return Orders.of(job.lines(JobTable.ORDERS), job.lines(JobTable.ORDER_LINES))
        .named(MarkNames.of(job.lines(JobTable.MARKS))::meant);
  }
}
