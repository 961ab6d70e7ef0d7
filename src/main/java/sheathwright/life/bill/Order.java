package sheathwright.life.bill;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.job.life.ApprovedHow;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderStatus;

/**
 * A change order that was written.
 *
 * @param number its number, such as {@code 01}
 * @param on the day it was written
 * @param status what became of it
 * @param usd its sum as the table of orders has it
 * @param approvedBy who said yes; empty where nobody did
 * @param approvedHow how
 * @param approvedOn when; empty where nobody did
 * @param lines what it asks for
 */
public record Order(
    String number,
    String on,
    OrderStatus status,
    Figure<Money> usd,
    String approvedBy,
    Optional<ApprovedHow> approvedHow,
    String approvedOn,
    List<OrderLine> lines) {

  /** Whether what it asks for is counted as ordered: neither refused nor withdrawn. */
  public boolean isCounted() {
    return status == OrderStatus.OFFERED || status == OrderStatus.APPROVED;
  }

  Order named(UnaryOperator<String> names) {
    return new Order(
        number,
        on,
        status,
        usd,
        approvedBy,
        approvedHow,
        approvedOn,
        lines.stream().map(line -> line.named(names)).toList());
  }

  /** How much of an item it asks for. */
  public Figure<Ratio> quantity(Item item) {
    return OrderLine.together(
        lines.stream().filter(line -> line.isOf(item)).map(OrderLine::quantity).toList(),
        OrderLine.NONE);
  }

  /** How much of an item it asks for because of one mark. */
  double part(Item item, String mark) {
    return lines.stream()
        .filter(line -> line.isOf(item))
        .mapToDouble(line -> line.parts().of(mark).quantity())
        .sum();
  }

  /** Whether it asks for an item because of a mark. */
  boolean names(Item item, String mark) {
    return lines.stream().anyMatch(line -> line.isOf(item) && line.parts().all().containsKey(mark));
  }

  /** Whether the action of a mark was typed when it was written. */
  boolean wasTyped(Item item, String mark) {
    return lines.stream().anyMatch(line -> line.isOf(item) && line.parts().of(mark).isTyped());
  }

  /** Its lines, added up. */
  public Figure<Money> sum() {
    return OrderLine.together(lines.stream().map(OrderLine::amount).toList(), OrderLine.NOTHING)
        .toCents();
  }
}
