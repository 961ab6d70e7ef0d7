package sheathwright.life.bill;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.life.Item;
import sheathwright.job.life.MarkParts;

/**
 * One line of a change order that was written; it never changes.
 *
 * @param item what is asked for; empty for an option that the owner chose
 * @param unit what it is counted in
 * @param quantity how many more; fewer, if a mark was taken back
 * @param amount what they come to
 * @param parts how many of them are for which mark; of an option, its name
 */
public record OrderLine(
    Optional<Item> item,
    String unit,
    Figure<Ratio> quantity,
    Figure<Money> amount,
    MarkParts parts) {

  static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  static final Figure<Money> NOTHING = Figure.of(0, Units.USD);

  OrderLine named(UnaryOperator<String> names) {
    return item.isEmpty() ? this : new OrderLine(item, unit, quantity, amount, parts.named(names));
  }

  /** Whether it asks for so much of an item. */
  public boolean isOf(Item wanted) {
    return item.filter(wanted::equals).isPresent();
  }

  boolean isOfOption(String name) {
    return item.isEmpty() && parts.all().containsKey(name);
  }

  /** What it is for. */
  public String label() {
    return item.map(Item::label)
        .orElseGet(() -> "Chosen: " + String.join(", ", parts.all().keySet()));
  }

  /** Several numbers added up. */
  static <Q extends Quantity> Figure<Q> together(List<Figure<Q>> all, Figure<Q> none) {
    return all.stream().reduce((one, other) -> one.plus(other)).orElse(none);
  }
}
