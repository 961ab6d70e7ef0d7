package sheathwright.life.bill;

import java.util.List;
import sheathwright.job.Estimate.Tie;

/** What must hold of a change order before it is written. */
final class OrderTies {

  private final NextOrder order;

  OrderTies(NextOrder order) {
    this.order = order;
  }

  List<Tie> all() {
    return order.accounts().agreement().ties();
  }
}
