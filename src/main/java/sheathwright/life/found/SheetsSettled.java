package sheathwright.life.found;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.Item;
import sheathwright.job.life.Stage;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.price.FoundUnit;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.sheathing.patch.PatchPlan;
import sheathwright.sheathing.place.SheetUnits;

/** What is found on the deck against what is sold of it: sheet by sheet, and what comes besides. */
public final class SheetsSettled {

  private static final Figure<Sheets> NONE = Figure.of(0, Units.SHEET);
  private static final Figure<Pieces> NO_PIECE = Figure.of(0, Units.PIECE);

  private final Estimate estimate;
  private final FoundWork work;
  private final SoldSheets sold;
  private final Figure<Sheets> found;
  private final Figure<Sheets> beyond;
  private final Figure<Sheets> notNeeded;
  private final Figure<Sheets> possible;
  private final Roll planes;
  private final Roll items;

  /** What one plane holds, was found to be bad, and could still turn out so. */
  private record Line(Deck.Part part, Figure<Sheets> most, Figure<Sheets> found) {

    Figure<Sheets> possible() {
      return most.minus(found).max(NONE);
    }
  }

  /** One thing that may be billed, as much as was found of it. */
  private record Priced(String label, String unit, Figure<?> quantity, Figure<?> price) {

    Figure<Money> amount() {
      return quantity.times(price).in(Units.USD).toCents();
    }
  }

  /** What the marks of an estimate lead to, settled. */
  public static SheetsSettled of(Estimate estimate) {
    return new SheetsSettled(estimate, FoundWork.of(estimate));
  }

  /** Settles what the marks of an estimate lead to. */
  public SheetsSettled(Estimate estimate, FoundWork work) {
    this.estimate = estimate;
    this.work = work;
    sold = new SoldSheets(estimate);
    Figure<Sheets> included = sold.included();
    found = work.found();
    beyond = found.minus(included).max(NONE).as("sheets_beyond_the_price", Units.SHEET);
    notNeeded = included.minus(found).max(NONE).as("sheets_not_needed_so_far", Units.SHEET);
    possible = sold.most().minus(found).max(NONE).as("sheets_still_possible", Units.SHEET);
    planes =
        Roll.of(
            "sheets_by_plane",
            "the sheets of each plane",
            estimate.deck().parts().stream().map(this::line).toList(),
            Roll.<Line>column("plane", line -> Choice.literal(line.part().plane().name())),
            Roll.column("places", line -> line.part().map().units().places()),
            Roll.column("most", Line::most),
            Roll.column("found", Line::found),
            Roll.column("possible", Line::possible));
    items =
        Roll.of(
            "found_items",
            "what was found beyond the price",
            priced(),
            Roll.<Priced>column("item", line -> Choice.literal(line.label())),
            Roll.column("unit", line -> Choice.literal(line.unit())),
            Roll.column("quantity", Priced::quantity),
            Roll.column("price_usd", line -> named(line.price())),
            Roll.column("amount_usd", Priced::amount));
  }

  private static <Q extends Quantity> Figure<Q> named(Figure<Q> price) {
    return price.as("price_usd", price.unit());
  }

  private Line line(Deck.Part part) {
    String plane = part.plane().name();
    return new Line(
        part,
        part.map().units().by(estimate.billRule(), "most_sheets_on_" + plane),
        work.sheets(part, estimate));
  }

  private List<Priced> priced() {
    List<Priced> lines = new ArrayList<>();
    lines.add(new Priced(Item.SHEET.label(), Item.SHEET.unit(), beyond, sold.extraSheet()));
    for (FoundPrice price : estimate.found()) {
      Item item = Item.valueOf(price.unit().name());
      lines.add(new Priced(item.label(), item.unit(), beyondThePrice(item), sold.price(price)));
    }
    return lines;
  }

  /** What was found of an item that the price does not hold already. */
  private Figure<?> beyondThePrice(Item item) {
    Figure<?> all = work.quantities().get(item);
    return item == Item.LIFT
        ? all.in(Units.PIECE)
            .minus(estimate.quote().included(item).in(Units.PIECE))
            .max(NO_PIECE)
            .as("sheets_lifted_beyond_the_price", Units.PIECE)
        : all;
  }

  /** What the marks lead to, one by one. */
  public FoundWork work() {
    return work;
  }

  /** Each plane with its places, what they count at most, what was found, and what is left. */
  public Roll planes() {
    return planes;
  }

  /** Everything that has a price, with how much was found of it beyond the price. */
  public Roll items() {
    return items;
  }

  /** Sheets that the marks call for, by the bill's rule. */
  public Figure<Sheets> found() {
    return found;
  }

  /** Those of them that are not in the price. */
  public Figure<Sheets> beyond() {
    return beyond;
  }

  /** Sheets in the price, as it was quoted or agreed. */
  public Figure<Sheets> included() {
    return sold.included();
  }

  /** What comes back for each of them that is not needed. */
  public Figure<Per<Money, Sheets>> creditEach() {
    return sold.credit();
  }

  /** Sheets in the price that no mark calls for so far. */
  public Figure<Sheets> notNeeded() {
    return notNeeded;
  }

  /** Sheets that no mark calls for yet. */
  public Figure<Sheets> possible() {
    return possible;
  }

  /** What comes back if no more is found. */
  public Figure<Money> credit() {
    return notNeeded
        .times(sold.credit())
        .in(Units.USD)
        .toCents()
        .as("credit_so_far_usd", Units.USD);
  }

  /** What everything comes to that was found beyond the price. */
  public Figure<Money> comesTo() {
    return items.sum("amount_usd", Units.USD).as("found_beyond_the_price_usd", Units.USD);
  }

  /** What the marks lead to and what has no price, each with what its price wants. */
  public List<Problem> unpriced() {
    Job job = estimate.job();
    List<Problem> unpriced = new ArrayList<>();
    for (FoundUnit unit : FoundUnit.values()) {
      Item item = Item.valueOf(unit.name());
      List<Found> marks = work.list().stream().filter(each -> isLedTo(each, item)).toList();
      if (!marks.isEmpty()) {
        unit.missingPrices(job.priceBook())
            .forEach(field -> unpriced.add(missing(JobTable.PRICES, field, unit, marks)));
        unit.missingRates(job.rateBook())
            .forEach(field -> unpriced.add(missing(JobTable.RATES, field, unit, marks)));
      }
    }
    return unpriced;
  }

  /** Whether something leads to an item, or would if the rafters might be repaired. */
  private static boolean isLedTo(Found found, Item item) {
    boolean isCounted = found.item().equals(Optional.of(item)) && found.quantity() > 0;
    return isCounted || item == Item.LIFT && isLeveling(found);
  }

  private static boolean isLeveling(Found found) {
    return found.mark().startsWith("level ");
  }

  private static Problem missing(
      JobTable table, Field<?> field, FoundUnit unit, List<Found> marks) {
    String message =
        "%s is missing: %s, %s; without it \"%s\" has no price, and it is what %s %s to"
            .formatted(
                field.name(),
                field.label(),
                field.allowed(),
                unit.word(),
                marks.stream().limit(3).map(SheetsSettled::said).collect(Collectors.joining(", "))
                    + (marks.size() > 3 ? " and %s more".formatted(marks.size() - 3) : ""),
                marks.size() > 1 ? "lead" : "leads");
    return new Problem(table.file(), 0, "", message);
  }

  private static String said(Found found) {
    return isLeveling(found) ? found.mark() : "mark " + found.mark();
  }

  /** Whether the job has come so far that everything that it uses must have a price. */
  public boolean mustBePriced() {
    return estimate.job().stage().value().isAtLeast(Stage.QUOTED);
  }

  /** What must hold between marks, map and bill, where all of it is told. */
  public List<Estimate.Tie> ties() {
    List<Estimate.Tie> ties = new ArrayList<>(tiesToTheMap());
    if (!work.list().isEmpty()) {
      ties.add(
          new Estimate.Tie(
              "Marks without an action: none",
              work.withoutAction().isAtMost(Figure.of(0, Units.RATIO))));
      ties.add(
          new Estimate.Tie(
              "What is done about each mark is what was counted",
              work.decidedAnew().isAtMost(Figure.of(0, Units.RATIO))));
      ties.add(
          new Estimate.Tie(
              "The sheets found plane by plane are no fewer than those of the whole deck",
              planes.sum("found", Units.SHEET).isAtLeast(found)));
      if (estimate.job().lines(JobTable.AGREED).isEmpty()) {
        ties.add(
            new Estimate.Tie(
                "No more sheets are found than are in the price", beyond.isAtMost(NONE)));
      }
      ties.add(
          new Estimate.Tie(
              "Everything that the marks lead to has a price",
              work.counted("marks_without_a_price", unpriced().size())
                  .isAtMost(Figure.of(0, Units.RATIO))));
    }
    return ties;
  }

  /** What must hold between marks and map. */
  private List<Estimate.Tie> tiesToTheMap() {
    List<Estimate.Tie> ties = new ArrayList<>();
    if (work.list().isEmpty()) {
      return ties;
    }
    List<Condition> same = new ArrayList<>();
    for (Deck.Part part : estimate.deck().parts()) {
      part.patches().map(patches -> isTheSame(part, patches)).ifPresent(same::add);
    }
    if (!same.isEmpty()) {
      ties.add(
          Estimate.Tie.all(
              "The places that the marks have replaced are those that are cut out on the map",
              "marks_are_on_the_map_",
              same));
    }
    ties.add(
        new Estimate.Tie(
            "Solved for what stands here now: found by marks",
            work.solution().state().is(Solution.CURRENT)));
    return ties;
  }

  private Condition isTheSame(Deck.Part part, PatchPlan patches) {
    SheetUnits byMarks = work.replaced(part);
    SheetUnits onTheMap = patches.units();
    return Condition.all(
        byMarks.places().isTheSameAs(onTheMap.places()),
        byMarks.halves().isTheSameAs(onTheMap.halves()),
        byMarks.area().isTheSameAs(onTheMap.area()));
  }
}
