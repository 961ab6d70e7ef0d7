package sheathwright.roof;

import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Roof planes between a level eave and a level ridge. */
public final class Planes {

  private static final Source TRAPEZOID = Source.derived("area of a trapezoid");
  private static final Source PYTHAGORAS = Source.derived("theorem of Pythagoras");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.FOOT);

  private Planes() {}

  /**
   * The area of a roof plane between a level eave and a level ridge, and how long its ridge, hips,
   * valleys and rakes are.
   *
   * <pre>
   * ridge = eave − left lean − right lean
   * area  = (eave + ridge) ÷ 2 × slope length
   * side  = √(lean² + slope length²): a hip if it leans in, a valley if it leans out, a rake if neither
   * </pre>
   *
   * <p>Does not cover openings, or planes with more than four sides (see {@code outline} at the
   * prompt). A hip or valley belongs to two planes: of the whole roof it is half of what the planes
   * add up to.
   *
   * <p>On a roof of equal slopes and square corners a hip leans in by the run of the common
   * rafters, a valley out by it.
   *
   * <pre>{@code
   * planeMeasures(PlaneSize.eave(ft(40)).slope(ft(12)), Leans.left(ft(12)).right(ft(12))).area() // 336 sq ft
   * planeMeasures(PlaneSize.eave(ft(20)).slope(ft(12)), Leans.left(ft(0)).right(ft(-12))).valley() // 16' 11-5/8"
   * }</pre>
   *
   * @param size of the plane
   * @param leans of its sides
   * @return square feet of deck, and feet of ridge, hips, valleys and rakes
   * @throws RefusedException if a number lies outside its range, or the sides cross below the ridge
   * @see "derived: area of a trapezoid and theorem of Pythagoras"
   */
  @LibraryFunction(words = {"hip length", "valley length", "ridge length", "square"})
  public static PlaneMeasures planeMeasures(PlaneSize size, Leans leans) {
    var along = size.eave();
    var up = size.slope();
    var left = leans.left();
    var right = leans.right();

    var across = along.minus(left).minus(right);
    var ridge =
        across
            .onlyIf(
                across.isAtLeast(NOTHING),
                "the sides cross below the ridge: left_lean_ft and right_lean_ft together are more than eave_ft; a triangle's"
                    + " leans add up to its eave")
            .as("ridge_ft", Units.FOOT, TRAPEZOID);
    var area =
        along.plus(ridge).dividedBy(TWO).times(up).as("area_sf", Units.SQUARE_FOOT, TRAPEZOID);
    var leftSide = side(left, up, "left_side_ft");
    var rightSide = side(right, up, "right_side_ft");
    var hip =
        leaningIn(left, leftSide, "left_hip_ft")
            .plus(leaningIn(right, rightSide, "right_hip_ft"))
            .as("hip_ft", Units.FOOT);
    var valley =
        leaningOut(left, leftSide, "left_valley_ft")
            .plus(leaningOut(right, rightSide, "right_valley_ft"))
            .as("valley_ft", Units.FOOT);
    var rake =
        upright(left, leftSide, "left_rake_ft")
            .plus(upright(right, rightSide, "right_rake_ft"))
            .as("rake_ft", Units.FOOT);
    return new PlaneMeasures(area, ridge, hip, valley, rake);
  }

  private static Figure<Length> side(Figure<Length> lean, Figure<Length> up, String name) {
    return lean.squared()
        .in(Units.SQUARE_FOOT)
        .plus(up.squared())
        .squareRoot()
        .as(name, Units.FOOT, PYTHAGORAS);
  }

  private static Figure<Length> leaningIn(Figure<Length> lean, Figure<Length> side, String name) {
    return Figure.choose(lean.isMoreThan(NOTHING), side, NOTHING).as(name, Units.FOOT);
  }

  private static Figure<Length> leaningOut(Figure<Length> lean, Figure<Length> side, String name) {
    return Figure.choose(lean.isLessThan(NOTHING), side, NOTHING).as(name, Units.FOOT);
  }

  private static Figure<Length> upright(Figure<Length> lean, Figure<Length> side, String name) {
    return Figure.choose(lean.isTheSameAs(NOTHING), side, NOTHING).as(name, Units.FOOT);
  }
}
