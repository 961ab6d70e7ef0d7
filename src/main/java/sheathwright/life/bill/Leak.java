package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.OrderFields;
import sheathwright.job.table.Row;

/**
 * What the work on the deck cost by the crew's log against what it sold for; for the office alone.
 * The log names an item's work by the item's word.
 */
public final class Leak {

  /**
   * One item.
   *
   * @param item what it is
   * @param done how many by the log
   * @param hours of work by the log, of everybody together
   * @param cost of those hours, with their burden, and of the material
   * @param sold what the owner pays for it
   */
  public record Line(
      Item item, Figure<Ratio> done, Figure<Time> hours, Figure<Money> cost, Figure<Money> sold) {

    /** What it cost beyond what it sold for. */
    public Figure<Money> leak() {
      return cost.minus(sold).as(item.word() + "_leak_usd", Units.USD);
    }
  }

  private final List<Line> lines = new ArrayList<>();
  private final List<String> others = new ArrayList<>();
  private final Roll roll;

  /**
   * The leak of a job.
   *
   * @param log the rows of the crew's log
   * @param labor an hour with its burden
   * @param material of one of each item, with its tax
   * @param sold what the owner pays for each item
   */
  public static Leak of(
      List<Row> log,
      Figure<Per<Money, Time>> labor,
      Map<Item, Figure<Money>> material,
      Map<Item, Figure<Money>> sold) {
    return new Leak(log, labor, material, sold);
  }

  private Leak(
      List<Row> log,
      Figure<Per<Money, Time>> labor,
      Map<Item, Figure<Money>> material,
      Map<Item, Figure<Money>> sold) {
    for (Item item : Item.values()) {
      List<Row> of = log.stream().filter(row -> isOf(row, item)).toList();
      Figure<Money> price = sold.getOrDefault(item, OrderLine.NOTHING);
      if (!of.isEmpty() || price.value() != 0) {
        Figure<Ratio> done =
            OrderLine.together(
                    of.stream().map(row -> row.of(AgreedFields.QUANTITY)).toList(), OrderLine.NONE)
                .as(item.word() + "_done", Units.RATIO);
        Figure<Time> hours =
            OrderLine.together(
                    of.stream().map(row -> row.of(OrderFields.HOURS)).toList(),
                    Figure.of(0, Units.HOUR))
                .as(item.word() + "_done_h", Units.HOUR);
        Figure<Money> bought =
            material.getOrDefault(item, OrderLine.NOTHING).times(done).in(Units.USD);
        Figure<Money> cost =
            hours.times(labor).in(Units.USD).plus(bought).as(item.word() + "_cost_usd", Units.USD);
        lines.add(new Line(item, done, hours, cost, price));
      }
    }
    log.stream()
        .map(row -> row.of(OrderFields.TASK).value())
        .filter(task -> Words.of(Item.values(), task).isEmpty())
        .distinct()
        .forEach(others::add);
    roll =
        Roll.of(
            "leak",
            "what the deck cost and sold for",
            lines,
            Roll.<Line>column("item", line -> Choice.literal(line.item().label())),
            Roll.column("done", Line::done),
            Roll.column("hours_h", Line::hours),
            Roll.column("cost_usd", Line::cost),
            Roll.column("sold_usd", Line::sold),
            Roll.column("leak_usd", Line::leak));
  }

  private static boolean isOf(Row row, Item item) {
    return row.of(OrderFields.TASK).value().equals(item.word());
  }

  /** The items that were done or sold. */
  public List<Line> lines() {
    return List.copyOf(lines);
  }

  /** The same as a list. */
  public Roll roll() {
    return roll;
  }

  /** The tasks of the log that are no work on the deck, and are not compared. */
  public List<String> others() {
    return List.copyOf(others);
  }

  /** What the work on the deck cost beyond what it sold for; less than nothing if it was gained. */
  public Figure<Money> total() {
    return (lines.isEmpty() ? OrderLine.NOTHING : roll.sum("leak_usd", Units.USD))
        .as("leak_usd", Units.USD);
  }
}
