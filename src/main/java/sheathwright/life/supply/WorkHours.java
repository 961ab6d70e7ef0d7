package sheathwright.life.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.Leveling;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.price.FoundFields;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;

/**
 * How long a job's own tasks last, by the office's rates: quantity times hours. Stripping the old
 * covering and laying the new one are not among them. Work on rafters that waits for somebody's
 * decision has its hours apart.
 */
public final class WorkHours {

  private static final Figure<Sheets> NO_SHEET = Figure.of(0, Units.SHEET);
  private static final Figure<Pieces> NO_PIECE = Figure.of(0, Units.PIECE);
  private static final Figure<Time> NO_HOURS = Figure.of(0, Units.HOUR);
  private static final Figure<Ratio> QUARTER =
      Figure.constant("step_of_days", 0.25, Units.RATIO, Source.COMMON_PRACTICE);

  /**
   * One task.
   *
   * @param what is done
   * @param quantity how many
   * @param unit of what
   * @param each hours for one
   */
  private record Task(String what, Figure<?> quantity, String unit, Figure<?> each) {

    Figure<Time> hours() {
      return quantity.times(each).in(Units.HOUR);
    }
  }

  private final Job job;
  private final Facts rates;
  private final Map<Item, Figure<?>> found;
  private final Supply supply;
  private final List<Task> now = new ArrayList<>();
  private final List<Task> later = new ArrayList<>();
  private final List<String> unrated = new ArrayList<>();
  private final Roll roll;
  private final Figure<Time> total;

  /**
   * The hours of a job.
   *
   * @param found how much of each item its marks lead to
   * @param supply what it takes besides
   */
  public WorkHours(Estimate estimate, Map<Item, Figure<?>> found, Supply supply) {
    this.job = estimate.job();
    this.rates = job.rateBook();
    this.found = found;
    this.supply = supply;
    sheets();
    item(Item.REFASTEN, FoundFields.REFASTEN_HOURS);
    item(Item.RELIEF, FoundFields.RELIEF_HOURS);
    add(now, Item.BLOCK.label(), supply.blocks(), Item.BLOCK.unit(), FoundFields.BLOCK_HOURS);
    add(now, Item.SCAB.label(), supply.scabs(), Item.SCAB.unit(), FoundFields.SCAB_HOURS);
    item(Item.CLIP, FoundFields.CLIP_HOURS);
    item(Item.LIFT, FoundFields.LIFT_HOURS);
    item(Item.COVER, FoundFields.COVER_HOURS);
    item(Item.BOARD, FoundFields.BOARD_HOURS);
    item(Item.RENAIL, FoundFields.RENAIL_HOURS);
    Condition mayRepair = estimate.framing().mayRepair().is(YesNo.YES);
    estimate.rafterLeveling().ifPresent(leveling -> rafters(leveling, mayRepair));
    roll = roll("hours", "the hours", now);
    total = roll.sum("hours_h", Units.HOUR).as("hours_in_all_h", Units.HOUR);
  }

  /** Those in the price as foreseen; more of them as found on the day. */
  private void sheets() {
    Figure<Sheets> planned = supply.sheets().planned();
    Figure<Sheets> marked =
        found.containsKey(Item.SHEET) ? found.get(Item.SHEET).in(Units.SHEET) : NO_SHEET;
    Figure<Sheets> foreseen =
        found.containsKey(Item.SHEET)
            ? Figure.choose(supply.sheets().isOpened(), planned.min(marked), planned)
                .as("sheets_foreseen", Units.SHEET)
            : planned;
    add(now, "Deck sheets, foreseen", foreseen, "sheet", OfficeFields.PLANNED_SHEET_HOURS);
    if (found.containsKey(Item.SHEET)) {
      Figure<Sheets> more = marked.minus(planned).max(NO_SHEET).as("sheets_beyond", Units.SHEET);
      add(now, "Deck sheets beyond those", more, "sheet", OfficeFields.EXTRA_SHEET_HOURS);
    }
  }

  private void item(Item item, Field<? extends Figure<?>> each) {
    if (found.containsKey(item)) {
      add(now, item.label(), found.get(item), item.unit(), each);
    }
  }

  private void rafters(Leveling leveling, Condition mayRepair) {
    rafters(Item.SISTER, leveling.sisters(), OfficeFields.SISTER_HOURS, mayRepair);
    rafters(Item.SHIM, leveling.shims(), OfficeFields.SHIM_HOURS, mayRepair);
  }

  private void rafters(
      Item item, Figure<Pieces> rafters, Field<? extends Figure<?>> each, Condition mayRepair) {
    String name = "hours_of_" + item.word();
    Figure<Pieces> done =
        Figure.choose(mayRepair, rafters, NO_PIECE).as(name + "_now", Units.PIECE);
    Figure<Pieces> waits =
        Figure.choose(mayRepair, NO_PIECE, rafters).as(name + "_later", Units.PIECE);
    add(now, item.label(), done, item.unit(), each);
    add(later, item.label(), waits, item.unit(), each);
  }

  private void add(
      List<Task> tasks,
      String what,
      Figure<?> quantity,
      String unit,
      Field<? extends Figure<?>> each) {
    if (rates.knows(each)) {
      tasks.add(new Task(what, quantity, unit, rates.fact(each)));
    } else if (quantity.value() > 0) {
      unrated.add("%s (%s)".formatted(what, each.name()));
    }
  }

  private static Roll roll(String name, String title, List<Task> tasks) {
    return Roll.of(
        name,
        title,
        tasks,
        Roll.<Task>column("task", task -> Choice.literal(task.what())),
        Roll.column("unit", task -> Choice.literal(task.unit())),
        Roll.column("quantity", Task::quantity),
        Roll.column("each_h", Task::each),
        Roll.column("hours_h", Task::hours));
  }

  /** Each task that may be done, with its quantity and its hours. */
  public Roll roll() {
    return roll;
  }

  /** The same of what waits for a decision; nothing if nothing could. */
  public Optional<Roll> waiting() {
    return later.isEmpty()
        ? Optional.empty()
        : Optional.of(roll("hours_waiting", "the hours that wait for the engineer", later));
  }

  /** What is done and has no rate of hours, with the rate that it wants. */
  public List<String> unrated() {
    return unrated;
  }

  /** Hours of labor in all, without what waits. */
  public Figure<Time> total() {
    return total;
  }

  /** The day of the crew; nothing where the job does not say all of it. */
  public Optional<Figure<Time>> ofADay() {
    boolean isSaid =
        job.knows(LifeFields.CREW)
            && job.knows(LifeFields.CREW_HOURS)
            && job.knows(LifeFields.EFFICIENCY);
    return isSaid
        ? Optional.of(
            job.fact(LifeFields.CREW)
                .times(job.fact(LifeFields.CREW_HOURS))
                .times(job.fact(LifeFields.EFFICIENCY))
                .as("hours_of_a_day_h", Units.HOUR))
        : Optional.empty();
  }

  /** Days on the roof, up to a quarter; nothing where nobody can say. */
  public Optional<Figure<Ratio>> days() {
    return ofADay()
        .map(
            day ->
                total
                    .max(NO_HOURS)
                    .dividedBy(day)
                    .in(Units.RATIO)
                    .roundedUpTo(QUARTER)
                    .as("days_of_work", Units.RATIO));
  }
}
