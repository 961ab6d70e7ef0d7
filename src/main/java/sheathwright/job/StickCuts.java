package sheathwright.job;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.cutting.Patience;
import sheathwright.cutting.stick.CutStick;
import sheathwright.cutting.stick.StickCutting;
import sheathwright.cutting.stick.StickPlan;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.plan.LevelPiece;
import sheathwright.leveling.plan.LevelPlan;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.leveling.plan.LevelSticks;
import sheathwright.leveling.plan.Straightened;

/** Pieces cut from as cheap sticks as can be, stick by stick. */
public final class StickCuts {

  private static final double KERF = 0.125;
  // Not tuned: ends a list unlike ours. Of our 46 stick lists 39 are proven within 2,000 questions
  // and the others within 5,078, which half leaves time for as well.
  private static final int QUESTIONS = 20_000;
  private static final double CENTS = 100;
  private static final double SIXTEENTHS = 16;
  private static final double DUST = 1e-6;
  private static final Source CUT = Source.derived("least cost of sticks, 1/8 in saw cuts");
  private static final int MOST = 500;
  private static final Figure<Pieces> ONE = Figure.of(1, Units.PIECE);

  private final List<LevelPiece> pieces;
  private final List<LevelSticks.OnSale> onSale;
  private final List<CutStick> cuts;
  private final boolean isProven;
  private final Solution solution;
  private final Roll roll;
  private final List<Sticks> sticks;
  private final Figure<Money> cost;
  private final Figure<Money> atLeast;

  private StickCuts(
      String what, List<LevelPiece> pieces, List<LevelSticks.OnSale> onSale, Reading reading) {
    this.pieces = pieces;
    this.onSale = onSale;
    solution = reading.solution(what + "_cutting");
    LevelSticks sticks = LevelSticks.of(pieces, onSale, KERF);
    StickPlan plan = StickCutting.plan(sticks.order(), Patience.asked(QUESTIONS));
    cuts = longestFirst(plan);
    isProven = plan.isProven();
    roll =
        Roll.of(
            what + "_cuts",
            "the %ss, stick by stick".formatted(what),
            cuts,
            Roll.<CutStick>column("pieces", cut -> solution.word("pieces", words(cut), CUT)),
            Roll.column("stick_ft", cut -> found("stick_ft", feet(cut))),
            Roll.column("left_in", cut -> found("left_in", left(cut)).in(Units.INCH)));
    this.sticks =
        cuts.stream().map(this::feet).distinct().map(length -> sticks(what, length)).toList();
    cost = solution.figure(what + "_cutting_usd", plan.cost() / CENTS, Units.USD, CUT);
    atLeast =
        solution.figure(what + "_cutting_at_least_usd", plan.atLeast() / CENTS, Units.USD, CUT);
  }

  /** The cut list of all sisters, if there are any. */
  static Optional<StickCuts> of(List<SurveyedPlane> planes, List<LevelPrices.Stick> onSale) {
    return ofSisters(planes.stream().map(SurveyedPlane::plan).toList(), onSale);
  }

  private static Optional<StickCuts> ofSisters(
      List<LevelPlan> plans, List<LevelPrices.Stick> onSale) {
    Reading reading = new Reading();
    List<LevelPiece> sisters =
        plans.stream().flatMap(plan -> LevelPiece.of(plan, reading).stream()).toList();
    List<LevelSticks.OnSale> sold =
        onSale.stream()
            .map(stick -> plain(stick, reading))
            .filter(stick -> stick.feet() > 0)
            .toList();
    if (sisters.isEmpty()) {
      return Optional.empty();
    }
    LevelPiece longest = Collections.max(sisters, Comparator.comparingDouble(LevelPiece::inches));
    checkLongEnough(sold, longest.inches(), "sister");
    return Optional.of(new StickCuts("sister", sisters, sold, reading));
  }

  private static void checkLongEnough(List<LevelSticks.OnSale> sold, double inches, String what) {
    if (sold.stream().noneMatch(stick -> 12 * stick.feet() >= inches)) {
      throw new RefusedException(
          "no stick is long enough for a %s of %s; name one, stick(12 ft, $8.60)"
              .formatted(what, Lengths.inFeetAndInches(inches)));
    }
  }

  /** A stick on sale, to cut from: {@code stick(12 ft, $8.60)}. */
  public static LevelPrices.Stick stick(Figure<Length> length, Figure<Money> price) {
    return new LevelPrices.Stick(length, price.dividedBy(ONE).in(Units.USD_PER_PIECE));
  }

  /**
   * So many pieces of one length, cut from whichever of the sticks on sale make them cheapest.
   *
   * @param length of each, cut to the next sixteenth up
   * @throws RefusedException if nothing is on sale that is long enough
   */
  public static StickCuts cutSticks(
      Figure<Pieces> count, Figure<Length> length, LevelPrices.Stick... onSale) {
    Reading reading = new Reading();
    double inches = reading.number("length of a piece", length, Units.INCH);
    double many = reading.number("number of pieces", count, Units.PIECE);
    List<LevelSticks.OnSale> sold = Stream.of(onSale).map(stick -> plain(stick, reading)).toList();
    RefusedException.solvedFor(
        List.of(count, length),
        () -> {
          checkLongEnough(sold, inches, "piece");
          if (many < 1 || many > MOST || many != Math.rint(many)) {
            throw new RefusedException(
                "%s is given; cutSticks takes 1 to %s whole pieces".formatted(count, MOST));
          }
          return sold;
        });
    double cut = Math.ceil(inches * SIXTEENTHS - DUST) / SIXTEENTHS;
    return new StickCuts(
        "stick", Collections.nCopies((int) many, new LevelPiece("", cut)), sold, reading);
  }

  /**
   * The sisters of straightened rafters, cut from whichever of the sticks on sale make them
   * cheapest.
   *
   * @throws RefusedException if no rafter takes a sister
   */
  public static StickCuts cutSticks(Straightened rafters, LevelPrices.Stick... onSale) {
    return ofSisters(List.of(rafters.plan()), List.of(onSale))
        .orElseThrow(() -> new RefusedException("no rafter takes a sister: nothing is to be cut"));
  }

  private static LevelSticks.OnSale plain(LevelPrices.Stick stick, Reading reading) {
    return new LevelSticks.OnSale(
        reading.number("the length of " + stick.stock(), stick.stock(), Units.FOOT),
        reading.number("the price of " + stick.stock(), stick.price(), Units.USD_PER_PIECE));
  }

  private Sticks sticks(String what, double feet) {
    long count = cuts.stream().filter(cut -> feet(cut) == feet).count();
    String name = "%s_sticks_of_%s_ft".formatted(what, Shown.plain(feet).replace('.', '_'));
    return new Sticks(Figure.of(feet, Units.FOOT), solution.figure(name, count, Units.PIECE, CUT));
  }

  private Figure<Length> found(String name, double feet) {
    return solution.figure(name, feet, Units.FOOT, CUT);
  }

  private List<CutStick> longestFirst(StickPlan plan) {
    return plan.sticks().stream()
        .sorted(Comparator.comparingDouble((CutStick cut) -> -feet(cut)))
        .toList();
  }

  private double feet(CutStick cut) {
    return onSale.get(cut.stock()).feet();
  }

  private String words(CutStick cut) {
    return cut.pieces().stream()
        .map(pieces::get)
        .map(piece -> (piece.label() + " " + Lengths.inFeetAndInches(piece.inches())).strip())
        .collect(joining(", "));
  }

  private double left(CutStick cut) {
    double used = cut.pieces().stream().mapToDouble(piece -> pieces.get(piece).inches()).sum();
    return feet(cut) - (used + KERF * (cut.pieces().size() - 1)) / 12;
  }

  /** A line a stick: its length, what is cut from it, what is left. */
  public Roll roll() {
    return roll;
  }

  /**
   * Sticks of one length.
   *
   * @param length of each
   * @param count how many are cut from
   */
  public record Sticks(Figure<Length> length, Figure<Pieces> count) {}

  /** How many sticks of each length, the longest first. */
  public List<Sticks> sticks() {
    return sticks;
  }

  /** What the sticks cost, before tax. */
  public Figure<Money> cost() {
    return cost;
  }

  /** No cutting of these pieces costs less. */
  public Figure<Money> atLeast() {
    return atLeast;
  }

  Solution solution() {
    return solution;
  }

  /** How many sticks of each kind, what is cut from one, and whether it could cost less. */
  @Override
  public String toString() {
    Map<String, Long> alike =
        cuts.stream()
            .map(cut -> "%s ft: %s".formatted(Shown.plain(feet(cut)), words(cut)))
            .collect(groupingBy(each -> each, LinkedHashMap::new, counting()));
    String lines =
        alike.entrySet().stream()
            .map(each -> "%s of %s".formatted(each.getValue(), each.getKey()))
            .collect(joining("\n"));
    return "%s\n%s %s out of %s %s for %s; %s"
        .formatted(
            lines,
            pieces.size(),
            pieces.size() == 1 ? "piece" : "pieces",
            cuts.size(),
            cuts.size() == 1 ? "stick" : "sticks",
            cost,
            isProven
                ? "nothing cheaper can be cut"
                : "nothing cheaper was found, at least " + atLeast);
  }
}
