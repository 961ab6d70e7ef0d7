package sheathwright.life.bill;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.Row;

/**
 * What change orders ask for that were neither refused nor withdrawn, whatever becomes of an order
 * in a workbook. Which order a line belongs to, and what it is for, was written with the order.
 *
 * @param orders the rows of the table {@code orders}
 * @param lines the rows of the table {@code order_lines}
 */
record OrderedNow(List<Row> orders, List<Row> lines) {

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);

  /** How much of an item. */
  Figure<Ratio> of(Item item) {
    Map<String, Choice<OrderStatus>> statuses = new HashMap<>();
    for (Row order : orders) {
      statuses.put(order.of(OrderFields.ORDER).plain(), order.of(OrderFields.STATUS));
    }
    Figure<Ratio> sum = NONE;
    for (Row line : lines) {
      if (line.of(AgreedFields.ITEM).plain().equals(item.word())) {
        Choice<OrderStatus> status = statuses.get(line.of(OrderFields.ORDER).plain());
        sum =
            sum.plus(
                Figure.choose(
                    Condition.any(status.is(OrderStatus.REFUSED), status.is(OrderStatus.WITHDRAWN)),
                    NONE,
                    line.of(AgreedFields.QUANTITY)));
      }
    }
    return sum.as(item.word() + "_in_change_orders", Units.RATIO);
  }
}
