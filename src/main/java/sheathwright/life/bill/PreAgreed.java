package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.ApprovedHow;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;

/**
 * What may be done before anybody says yes, so that an open roof is not left in the rain.
 *
 * @param sheets up to so many over all; none, if the agreement does not speak of sheets
 * @param sum up to so much over all; none, if it does not speak of a sum
 */
public record PreAgreed(Optional<Figure<Ratio>> sheets, Optional<Figure<Money>> sum) {

  /** The orders that were approved so. */
  static List<Order> used(Accounts accounts) {
    return accounts.orders().that(OrderStatus.APPROVED).stream()
        .filter(order -> order.approvedHow().filter(ApprovedHow.PRE_AGREED::equals).isPresent())
        .toList();
  }

  /** Whether so much more, with everything that was approved so before, stays within it. */
  Condition covers(Accounts accounts, Figure<Ratio> moreSheets, Figure<Money> more) {
    Figure<Ratio> allSheets = moreSheets;
    Figure<Money> all = more;
    for (Order order : used(accounts)) {
      allSheets = allSheets.plus(order.quantity(Item.SHEET));
      all = all.plus(order.sum());
    }
    List<Condition> within = new ArrayList<>();
    Figure<Ratio> usedSheets = allSheets.as("pre_agreed_sheets_used", Units.RATIO);
    Figure<Money> used = all.toCents().as("pre_agreed_used_usd", Units.USD);
    sheets.map(usedSheets::isAtMost).ifPresent(within::add);
    sum.map(used::isAtMost).ifPresent(within::add);
    return Condition.all(within.toArray(Condition[]::new));
  }
}
