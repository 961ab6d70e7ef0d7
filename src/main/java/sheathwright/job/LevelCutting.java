package sheathwright.job;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
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
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.plan.LevelPiece;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.leveling.plan.LevelSticks;
import sheathwright.leveling.plan.PlannedRafter;

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
      List<SurveyedPlane> planes, List<LevelPrices.Stick> onSale, List<LevelPiece> pieces) {
    List<Solution.Input> given = new ArrayList<>();
    for (SurveyedPlane plane : planes) {
      for (PlannedRafter rafter : plane.plan().rafters()) {
        given.add(
            new Solution.Input(
                "the sister of rafter " + rafter.rafter(), rafter.sister().length()));
      }
    }
    onSale.forEach(
        stick -> given.add(new Solution.Input("the price of " + stick.stock(), stick.price())));
    solution = Solution.of("sister_cutting", given);
    LevelSticks sticks =
        LevelSticks.of(
            pieces,
            onSale.stream()
                .map(
                    stick ->
                        new LevelSticks.OnSale(
                            stick.stock().in(Units.FOOT).value(), stick.price().value()))
                .toList(),
            KERF);
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
    List<LevelPiece> sisters =
        planes.stream()
            .flatMap(plane -> LevelPiece.of(plane.plan()).stream())
            .filter(LevelPiece::isSister)
            .toList();
    return sisters.isEmpty()
        ? Optional.empty()
        : Optional.of(new LevelCutting(planes, onSale, sisters));
  }

  private Figure<Length> found(String name, double feet) {
    return solution.figure(name, feet, Units.FOOT, CUT);
  }

  private static List<CutStick> longestFirst(StickPlan plan, List<LevelPrices.Stick> onSale) {
    return plan.sticks().stream()
        .sorted(Comparator.comparingDouble((CutStick cut) -> -feet(cut, onSale)))
        .toList();
  }

  private static double feet(CutStick cut, List<LevelPrices.Stick> onSale) {
    return onSale.get(cut.stock()).stock().in(Units.FOOT).value();
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
      CutStick cut, List<LevelPrices.Stick> onSale, List<LevelPiece> pieces) {
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
