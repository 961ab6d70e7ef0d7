package sheathwright.life.found;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.Item;
import sheathwright.job.life.Stage;
import sheathwright.job.triage.LiftedPlaces;
import sheathwright.sheathing.place.BillRule;
import sheathwright.sheathing.place.SheetUnits;

/** What all marks of a job lead to, and what that comes to. */
public final class FoundWork {

  private static final Source COUNTED = Source.derived("counted on the marks");

  private final List<Found> list;
  private final Solution solution;
  private final Map<Deck.Part, SheetUnits> charged = new LinkedHashMap<>();
  private final Map<Deck.Part, SheetUnits> replaced = new LinkedHashMap<>();
  private final Map<Item, Figure<?>> quantities = new EnumMap<>(Item.class);

  private FoundWork(Estimate estimate) {
    Reading reading = new Reading();
    Deck deck = estimate.deck();
    Stage stage = reading.word("how far the job has come", estimate.job().stage());
    BillRule rule = reading.word("how one sheet is counted", estimate.billRule());
    Map<ReadMark, Deck.Part> marks = new LinkedHashMap<>();
    deck.marked().forEach(marked -> marks.put(ReadMark.of(reading, marked, stage), marked.part()));
    Claims claims = new Claims(reading, deck.parts(), List.copyOf(marks.keySet()));
    FoundCount count = new FoundCount(claims, rule);
    List<Found> all = new ArrayList<>(marks.keySet().stream().map(count::found).toList());
    for (Deck.Part part : deck.parts()) {
      Optional<LiftedPlaces> lifted = deck.lifted(part);
      if (lifted.isPresent()) {
        reading.word("places over built-up rafters", lifted.get().keys());
        boolean isSold =
            reading.word("may the crew repair the rafters", estimate.framing().mayRepair())
                == YesNo.YES;
        all.addAll(count.lifted(lifted.get().places(), isSold, stage.isAtLeast(Stage.OPENED)));
      }
    }
    this.list = List.copyOf(all);
    this.solution = reading.solution("found_by_marks");
    for (Deck.Part part : deck.parts()) {
      String on = "on_" + part.plane().name();
      charged.put(part, units("billed_" + on, areas(marks, part, claims, true)));
      replaced.put(part, units("replaced_" + on, areas(marks, part, claims, false)));
    }
    for (Item item : Item.values()) {
      if (item == Item.SHEET) {
        quantities.put(item, sheets().by(estimate.billRule(), "found_sheets"));
      } else if (isUsed(item)) {
        quantities.put(item, total(item));
      }
    }
  }

  /** What the marks of a job lead to. */
  public static FoundWork of(Estimate estimate) {
    return new FoundWork(estimate);
  }

  private static List<Double> areas(
      Map<ReadMark, Deck.Part> marks, Deck.Part part, Claims claims, boolean onlyCharged) {
    return marks.entrySet().stream()
        .filter(mark -> mark.getValue() == part)
        .filter(mark -> mark.getKey().isCharged() || !onlyCharged)
        .flatMap(mark -> claims.of(mark.getKey().key()).stream())
        .toList();
  }

  private SheetUnits units(String counted, List<Double> areas) {
    return SheetUnits.of(solution, counted, areas);
  }

  private boolean isUsed(Item item) {
    return list.stream().anyMatch(found -> found.item().equals(Optional.of(item)));
  }

  private Figure<?> total(Item item) {
    double sum =
        list.stream()
            .filter(found -> found.item().equals(Optional.of(item)))
            .mapToDouble(Found::quantity)
            .sum();
    return figure("found_" + item.word(), sum, unitOf(item));
  }

  /** What an item is counted in. */
  static Unit<?> unitOf(Item item) {
    return switch (item) {
      case SHEET -> Units.SHEET;
      case RELIEF, BLOCK -> Units.FOOT;
      case REFASTEN, SCAB, CLIP, LIFT, COVER, SISTER, SHIM -> Units.PIECE;
    };
  }

  private <Q extends Quantity> Figure<Q> figure(String name, double number, Unit<Q> unit) {
    return solution.figure(name, number, unit, COUNTED);
  }

  /** Each mark once, in the order of its table, then each sheet that the leveling plan lifts. */
  public List<Found> list() {
    return list;
  }

  /** How much of each item was found, sheets by the bill's rule; what was not found is left out. */
  public Map<Item, Figure<?>> quantities() {
    return quantities;
  }

  /** The sheets that are counted on a bill, of all planes. */
  public SheetUnits sheets() {
    return SheetUnits.together(List.copyOf(charged.values()));
  }

  /** The sheets of a plane that are counted on a bill. */
  public Figure<Sheets> sheets(Deck.Part part, Estimate estimate) {
    return charged.get(part).by(estimate.billRule(), "found_sheets_on_" + part.plane().name());
  }

  /** Every sheet of a plane that is replaced, whoever pays for it. */
  public SheetUnits replaced(Deck.Part part) {
    return replaced.get(part);
  }

  /** What it was all counted from. */
  public Solution solution() {
    return solution;
  }

  /** Each mark with what it leads to, a line each. */
  public Roll roll() {
    return Roll.of(
        "found",
        "what each mark leads to",
        list,
        Roll.<Found>column("mark", found -> word(found.mark())),
        Roll.column("place", found -> word(found.key())),
        Roll.column("reason", found -> word(found.reason())),
        Roll.column("item", found -> word(found.item().map(Item::label).orElse("no charge"))),
        Roll.column("quantity", found -> figure("", found.quantity(), Units.RATIO)),
        Roll.column("unit", found -> word(found.item().map(Item::unit).orElse(""))));
  }

  private sheathwright.figure.Choice<String> word(String text) {
    return solution.word("", text, COUNTED);
  }
}
