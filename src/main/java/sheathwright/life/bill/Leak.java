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

    /** What it cost beyond what it sold for; less than nothing, as a rule. */
    public Figure<Money> leak() {
      return cost.minus(sold);
    }
  }

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Time> NO_TIME = Figure.of(0, Units.HOUR);

  private final List<Line> lines = new ArrayList<>();
  private final List<String> others;
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
      List<Row> work = log.stream().filter(row -> task(row).equals(item.word())).toList();
      Figure<Money> price = sold.getOrDefault(item, OrderLine.NOTHING);
      if (!work.isEmpty() || price.value() != 0) {
        Figure<Money> each = material.getOrDefault(item, OrderLine.NOTHING);
        lines.add(line(item, work, labor, each, price));
      }
    }
    others =
        log.stream()
            .map(Leak::task)
            .filter(task -> Words.of(Item.values(), task).isEmpty())
            .distinct()
            .toList();
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

  private static String task(Row row) {
    return row.of(OrderFields.TASK).value();
  }

  private static Line line(
      Item item,
      List<Row> work,
      Figure<Per<Money, Time>> labor,
      Figure<Money> material,
      Figure<Money> sold) {
    String word = item.word();
    Figure<Ratio> done =
        OrderLine.together(
                work.stream().map(row -> row.of(AgreedFields.QUANTITY)).toList(), OrderLine.NONE)
            .as(word + "_done", Units.RATIO);
    Figure<Time> hours =
        OrderLine.together(work.stream().map(row -> row.of(OrderFields.HOURS)).toList(), NO_TIME)
            .as(word + "_work_h", Units.HOUR);
    Figure<Money> cost =
        hours
            .times(labor)
            .in(Units.USD)
            .plus(done.times(material))
            .as(word + "_cost_usd", Units.USD);
    return new Line(item, done, hours, cost, sold);
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
    return others;
  }

  /** What the work on the deck cost. */
  public Figure<Money> cost() {
    return sum("cost_usd", "deck_cost_usd");
  }

  /** What it sold for. */
  public Figure<Money> sold() {
    return sum("sold_usd", "deck_sold_usd");
  }

  /** What it cost beyond what it sold for; less than nothing, as a rule. */
  public Figure<Money> total() {
    return sum("leak_usd", "leak_usd");
  }

  /**
   * What was given away: what the same work would have sold for at the office's overhead and
   * margin, less what it sold for; less than nothing if more was gained.
   *
   * @param overhead on direct cost
   * @param margin of the price
   */
  public Figure<Money> givenAway(Figure<Ratio> overhead, Figure<Ratio> margin) {
    return cost()
        .times(ONE.plus(overhead))
        .dividedBy(ONE.minus(margin))
        .in(Units.USD)
        .minus(sold())
        .as("given_away_usd", Units.USD);
  }

  private Figure<Money> sum(String column, String name) {
    return (lines.isEmpty() ? OrderLine.NOTHING : roll.sum(column, Units.USD)).as(name, Units.USD);
  }
}
