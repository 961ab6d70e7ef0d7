package sheathwright.job;

import static java.util.stream.Collectors.joining;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sheathwright.cutting.Patience;
import sheathwright.cutting.stick.CutStick;
import sheathwright.cutting.stick.StickCutting;
import sheathwright.cutting.stick.StickPlan;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.plan.LevelPiece;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.leveling.plan.LevelSticks;

/** The sisters of all planes cut from as little stock as possible, stick by stick. */
public final class LevelCutting {

  private static final double KERF = 0.125;
  private static final int QUESTIONS = 20_000;
  private static final double CENTS = 100;
  private static final Source CUT = Source.derived("least cost of sticks, 1/8 in saw cuts");

  private final Solution solution;
  private final Roll roll;
  private final Figure<Money> cost;
  private final Figure<Money> atLeast;

  private LevelCutting(
      List<LevelPiece> pieces, List<LevelSticks.OnSale> onSale, Solution solution) {
    this.solution = solution;
    LevelSticks sticks = LevelSticks.of(pieces, onSale, KERF);
    StickPlan plan = StickCutting.plan(sticks.order(), Patience.asked(QUESTIONS));
    roll =
        Roll.of(
            "sister_cuts",
            "the sisters, stick by stick",
            longestFirst(plan, onSale),
            Roll.<CutStick>column(
                "pieces", cut -> solution.word("pieces", words(cut, pieces), CUT)),
            Roll.column("stick_ft", cut -> found("stick_ft", feet(cut, onSale))),
            Roll.column(
                "left_in", cut -> found("left_in", left(cut, onSale, pieces)).in(Units.INCH)));
    cost = solution.figure("sister_cutting_usd", plan.cost() / CENTS, Units.USD, CUT);
    atLeast =
        solution.figure("sister_cutting_at_least_usd", plan.atLeast() / CENTS, Units.USD, CUT);
  }

  /** The cut list of all sisters, if there are any. */
  static Optional<LevelCutting> of(List<SurveyedPlane> planes, List<LevelPrices.Stick> onSale) {
    Reading reading = new Reading();
    List<LevelPiece> sisters =
        planes.stream().flatMap(plane -> LevelPiece.of(plane.plan(), reading).stream()).toList();
    List<LevelSticks.OnSale> sold = onSale.stream().map(stick -> plain(stick, reading)).toList();
    return sisters.isEmpty()
        ? Optional.empty()
        : Optional.of(new LevelCutting(sisters, sold, reading.solution("sister_cutting")));
  }

  private static LevelSticks.OnSale plain(LevelPrices.Stick stick, Reading reading) {
    return new LevelSticks.OnSale(
        reading.number("the length of " + stick.stock(), stick.stock(), Units.FOOT),
        reading.number("the price of " + stick.stock(), stick.price(), Units.USD_PER_PIECE));
  }

  private Figure<Length> found(String name, double feet) {
    return solution.figure(name, feet, Units.FOOT, CUT);
  }

  private static List<CutStick> longestFirst(StickPlan plan, List<LevelSticks.OnSale> onSale) {
    return plan.sticks().stream()
        .sorted(Comparator.comparingDouble((CutStick cut) -> -feet(cut, onSale)))
        .toList();
  }

  private static double feet(CutStick cut, List<LevelSticks.OnSale> onSale) {
    return onSale.get(cut.stock()).feet();
  }

  private static String words(CutStick cut, List<LevelPiece> pieces) {
    return cut.pieces().stream()
        .map(pieces::get)
        .map(
            piece ->
                "%s %s"
                    .formatted(
                        piece.label(), sheathwright.figure.Lengths.inFeetAndInches(piece.inches())))
        .collect(joining(", "));
  }

  private static double left(
      CutStick cut, List<LevelSticks.OnSale> onSale, List<LevelPiece> pieces) {
    double used = cut.pieces().stream().mapToDouble(piece -> pieces.get(piece).inches()).sum();
    return feet(cut, onSale) - (used + KERF * (cut.pieces().size() - 1)) / 12;
  }

  /** A line a stick: its length, what is cut from it, what is left. */
  public Roll roll() {
    return roll;
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
}
