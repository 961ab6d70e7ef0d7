package sheathwright.life.found;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
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
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.job.life.Stage;
import sheathwright.job.triage.MarkDecision;
import sheathwright.sheathing.place.BillRule;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.SheetUnits;

/** What all marks of a job lead to, and what that comes to. */
public final class FoundWork {

  private static final Source COUNTED = Source.derived("counted on the marks");

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private final List<Found> list;
  private final Solution solution;
  private final Map<Deck.Part, SheetUnits> charged = new LinkedHashMap<>();
  private final Map<Deck.Part, SheetUnits> replaced = new LinkedHashMap<>();
  private final Map<Deck.Part, Figure<Length>> feetOfBoard = new LinkedHashMap<>();
  private final Map<Item, Figure<?>> quantities = new EnumMap<>(Item.class);
  private final Figure<Sheets> found;
  private final List<MarkDecision.Live> live;
  private final Roll roll;
  private final Figure<Ratio> withoutAction;
  private final Figure<Ratio> decidedAnew;

  private FoundWork(Estimate estimate) {
    Reading reading = new Reading();
    Deck deck = estimate.deck();
    Stage stage = reading.word("how far the job has come", estimate.job().stage());
    BillRule rule = reading.word("how one sheet is counted", estimate.billRule());
    Map<ReadMark, Deck.Part> marks = new LinkedHashMap<>();
    deck.marked().forEach(marked -> marks.put(ReadMark.of(reading, marked, stage), marked.part()));
    Claims claims = new Claims(reading, deck.parts(), List.copyOf(marks.keySet()));
    BoardCounts boards = new BoardCounts(marks.keySet().stream().sorted(ReadMark.COUNTED).toList());
    FoundCount count = new FoundCount(claims, rule, boards);
    List<Found> all = new ArrayList<>(count.found(List.copyOf(marks.keySet())));
    for (Deck.Part part : deck.parts()) {
      List<Place> lifted = deck.lifted(reading, part);
      if (!lifted.isEmpty()) {
        boolean isSold =
            reading.word("may the crew repair the rafters", estimate.framing().mayRepair())
                == YesNo.YES;
        all.addAll(count.lifted(lifted, isSold, stage.isAtLeast(Stage.OPENED)));
      }
    }
    this.list = List.copyOf(all);
    this.solution = reading.solution("found_by_marks");
    for (Deck.Part part : deck.ofBoards()) {
      String name = part.plane().name();
      double feet =
          marks.entrySet().stream()
              .filter(mark -> mark.getValue() == part && mark.getKey().isCharged())
              .flatMap(
                  mark -> list.stream().filter(each -> each.mark().equals(mark.getKey().key())))
              .filter(each -> each.item().equals(Optional.of(Item.BOARD)))
              .mapToDouble(Found::quantity)
              .sum();
      feetOfBoard.put(part, figure("found_boards_on_" + name, feet, Units.FOOT));
    }
    for (Deck.Part part : deck.parts()) {
      String on = "on_" + part.plane().name();
      charged.put(part, units("billed_" + on, areas(marks, part, claims, true)));
      replaced.put(part, units("replaced_" + on, areas(marks, part, claims, false)));
    }
    this.found =
        units(
                "billed",
                deck.parts().stream()
                    .flatMap(part -> areas(marks, part, claims, true).stream())
                    .toList())
            .by(estimate.billRule(), "found_sheets");
    for (Item item : Item.values()) {
      quantities.put(item, item == Item.SHEET ? found : total(item));
    }
    this.live = deck.marked().stream().map(marked -> marked.decision().live()).toList();
    this.roll = marksRoll();
    this.withoutAction =
        roll.sum("without", Units.RATIO).as("marks_without_an_action", Units.RATIO);
    this.decidedAnew = roll.sum("anew", Units.RATIO).as("marks_decided_anew", Units.RATIO);
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

  private Figure<?> total(Item item) {
    double sum =
        list.stream()
            .filter(found -> found.item().equals(Optional.of(item)))
            .mapToDouble(Found::quantity)
            .sum();
    return figure("found_" + item.word(), sum, unitOf(item));
  }

  /** What an item is counted in. */
  public static Unit<?> unitOf(Item item) {
    return switch (item) {
      case SHEET -> Units.SHEET;
      case RELIEF, BLOCK, BOARD, RENAIL -> Units.FOOT;
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

  /** How much of each item was found, sheets by the bill's rule; 0 of what was not found. */
  public Map<Item, Figure<?>> quantities() {
    return quantities;
  }

  /** The sheets that are counted on a bill, of all planes. */
  public Figure<Sheets> found() {
    return found;
  }

  /** The sheets of a plane that are counted on a bill. */
  public Figure<Sheets> sheets(Deck.Part part, Estimate estimate) {
    return charged.get(part).by(estimate.billRule(), "found_sheets_on_" + part.plane().name());
  }

  /** The feet of board of a plane that are counted on a bill; its deck is boards. */
  public Figure<Length> feetOfBoard(Deck.Part part) {
    return feetOfBoard.get(part);
  }

  /** Every sheet of a plane that is replaced, whoever pays for it. */
  public SheetUnits replaced(Deck.Part part) {
    return replaced.get(part);
  }

  /** What it was all counted from. */
  public Solution solution() {
    return solution;
  }

  /** A number that was counted on what the marks lead to. */
  Figure<Ratio> counted(String name, int number) {
    return figure(name, number, Units.RATIO);
  }

  /** Each mark with what it leads to, a line each. */
  public Roll roll() {
    return roll;
  }

  /** How many of them lead to nothing. */
  public Figure<Ratio> withoutAction() {
    return withoutAction;
  }

  /** How many of them are no longer what they were counted as. */
  public Figure<Ratio> decidedAnew() {
    return decidedAnew;
  }

  /**
   * A line of the list.
   *
   * @param found as it was counted
   * @param action as it is now
   * @param reason as it is now
   */
  private record Line(Found found, Choice<String> action, Choice<String> reason) {

    Figure<Ratio> without() {
      return Figure.choose(
          Condition.any(
              Arrays.stream(Decided.values())
                  .map(word -> action.is(word.word()))
                  .toArray(Condition[]::new)),
          NONE,
          ONE);
    }

    /** One, if it is no longer what it was counted as. */
    Figure<Ratio> anew() {
      return Figure.choose(action.is(found.action()), NONE, ONE);
    }
  }

  private Line line(int index) {
    Found each = list.get(index);
    return index < live.size()
        ? new Line(
            each,
            live.get(index).action(),
            CountedWith.reason(each.reason(), live.get(index).reason()))
        : new Line(each, word(each.action()), word(each.reason()));
  }

  private Roll marksRoll() {
    return Roll.of(
        "found",
        "what each mark leads to",
        IntStream.range(0, list.size()).mapToObj(this::line).toList(),
        Roll.<Line>column("mark", line -> word(line.found().mark())),
        Roll.column("place", line -> word(line.found().key())),
        Roll.column("action", Line::action),
        Roll.column("quantity", line -> figure("", line.found().quantity(), Units.RATIO)),
        Roll.column("unit", line -> word(line.found().item().map(Item::unit).orElse(""))),
        Roll.column("item", line -> word(line.found().item().map(Item::label).orElse("no charge"))),
        Roll.column("reason", Line::reason),
        Roll.column("without", Line::without),
        Roll.column("anew", Line::anew));
  }

  /** Each mark in plain words, by what it is called. */
  public Map<String, Choice<String>> inWords(Estimate estimate) {
    Map<String, Choice<String>> words = new LinkedHashMap<>();
    List<Deck.Marked> marks = estimate.deck().marked();
    for (int i = 0; i < marks.size(); i++) {
      words.put(list.get(i).mark(), word(DoneInWords.of(marks.get(i), list.get(i))));
    }
    return words;
  }

  private Choice<String> word(String text) {
    return solution.word("", text, COUNTED);
  }
}
