package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.MarkParts;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;

/** The change orders that were written so far, in the order of their table. */
public final class Orders {

  private final List<Order> all;
  private final OrderedNow now;

  /**
   * The orders that the rows of the tables {@code orders} and {@code order_lines} tell.
   *
   * @throws ProblemsException if a number stands there twice, a line belongs to no order, names no
   *     item or no marks, or an approval does not say by whom, how and when
   */
  public static Orders of(List<Row> orders, List<Row> lines) {
    RowProblems wrong = new RowProblems();
    Map<String, List<OrderLine>> byOrder = new LinkedHashMap<>();
    for (Row row : orders) {
      String number = row.of(OrderFields.ORDER).value();
      if (byOrder.put(number, new ArrayList<>()) != null) {
        wrong.add(JobTable.ORDERS, row, OrderFields.ORDER, "\"" + number + "\" appears twice");
      }
      checkApproval(row, wrong);
    }
    for (Row row : lines) {
      String number = row.of(OrderFields.ORDER).value();
      if (!byOrder.containsKey(number)) {
        wrong.add(
            JobTable.ORDER_LINES,
            row,
            OrderFields.ORDER,
            "\"%s\" is no order of %s; there are: %s"
                .formatted(number, JobTable.ORDERS.file(), String.join(", ", byOrder.keySet())));
      } else {
        line(row, wrong).ifPresent(byOrder.get(number)::add);
      }
    }
    wrong.raise();
    return new Orders(
        orders.stream()
            .map(row -> order(row, byOrder.get(row.of(OrderFields.ORDER).value())))
            .toList(),
        new OrderedNow(orders, lines));
  }

  private Orders(List<Order> all, OrderedNow now) {
    this.all = List.copyOf(all);
    this.now = now;
  }

  /** How much of an item they ask for, whatever becomes of them in a workbook. */
  Figure<Ratio> askedNow(Item item) {
    return now.of(item);
  }

  private static void checkApproval(Row row, RowProblems wrong) {
    boolean isApproved = row.of(OrderFields.STATUS).value() == OrderStatus.APPROVED;
    for (var field :
        List.of(OrderFields.APPROVED_BY, OrderFields.APPROVED_HOW, OrderFields.APPROVED_ON)) {
      if (isApproved && !row.has(field)) {
        wrong.add(
            JobTable.ORDERS,
            row,
            field,
            "it is blank, and the order is approved: say by whom, how and on which day; "
                + field.allowed());
      }
    }
  }

  private static Optional<OrderLine> line(Row row, RowProblems wrong) {
    String name = row.of(AgreedFields.ITEM).value();
    Optional<Item> item = Words.of(Item.values(), name);
    boolean isOption = name.equals(OrderFields.OPTION_LINE);
    if (item.isEmpty() && !isOption) {
      wrong.add(
          JobTable.ORDER_LINES,
          row,
          AgreedFields.ITEM,
          "\"%s\" is not an item; change-order writes this table".formatted(name));
    }
    try {
      MarkParts parts = MarkParts.read(row.of(OrderFields.MARKS).value());
      String cell = "order_line_" + row.line().number();
      return Optional.of(
              new OrderLine(
                  item,
                  row.of(AgreedFields.UNIT).value(),
                  Agreement.frozen(row, AgreedFields.QUANTITY, cell),
                  Agreement.frozen(row, AgreedFields.USD, cell + "_usd"),
                  parts))
          .filter(line -> item.isPresent() || isOption);
    } catch (RefusedException otherwise) {
      wrong.add(JobTable.ORDER_LINES, row, OrderFields.MARKS, otherwise.getMessage());
      return Optional.empty();
    }
  }

  private static Order order(Row row, List<OrderLine> lines) {
    String number = row.of(OrderFields.ORDER).value();
    return new Order(
        number,
        row.of(OrderFields.ON).value(),
        row.of(OrderFields.STATUS).value(),
        row.has(AgreedFields.USD)
            ? Agreement.frozen(
                row, AgreedFields.USD, "order_" + number.replaceAll("\\W", "_") + "_usd")
            : OrderLine.NOTHING,
        row.has(OrderFields.APPROVED_BY) ? row.of(OrderFields.APPROVED_BY).value() : "",
        row.has(OrderFields.APPROVED_HOW)
            ? Optional.of(row.of(OrderFields.APPROVED_HOW).value())
            : Optional.empty(),
        row.has(OrderFields.APPROVED_ON) ? row.of(OrderFields.APPROVED_ON).value() : "",
        List.copyOf(lines));
  }

  /** The same, each mark by the name that it has by now. */
  public Orders named(UnaryOperator<String> names) {
    return new Orders(all.stream().map(order -> order.named(names)).toList(), now);
  }

  /** All of them. */
  public List<Order> all() {
    return all;
  }

  /** Those that were written after one of them. */
  List<Order> after(Order order) {
    return all.subList(all.indexOf(order) + 1, all.size());
  }

  /** Those that became this. */
  public List<Order> that(OrderStatus status) {
    return all.stream().filter(order -> order.status() == status).toList();
  }
}
