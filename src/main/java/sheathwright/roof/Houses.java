package sheathwright.roof;

import java.util.List;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Whole roofs from their plans. */
public final class Houses {

  private static final Source ONE_SLOPE =
      Source.derived("roof of one slope: plan area × slope factor, plan length × factor");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.FOOT);
  private static final Figure<Area> NO_AREA = Figure.of(0, Units.SQUARE_FOOT);

  private Houses() {}

  /** A house without a wing. */
  public static House house(HouseBody body) {
    return house(body, Wing.none());
  }

  /**
   * The whole roof of a house from its plan: area, and how long its ridges, hips, valleys, eaves
   * and rakes are.
   *
   * <pre>
   * area   = (length × width + wing width × wing out) × slope factor
   * hips   = 4 × width ÷ 2 × hip and valley factor, if the ends are hipped
   * valley = wing width × hip and valley factor
   * ridge  = length − width if the ends are hipped, else length; and wing out + wing width ÷ 2
   * eaves  = 2 × (length + width) if the ends are hipped, else 2 × length; − wing width + 2 × wing out
   * rakes  = wing width × slope factor, and 2 × width × slope factor if the ends are gabled
   * </pre>
   *
   * <p>Does not cover slopes that differ, eaves at different heights, corners that are not square,
   * or parts that stand on a wing.
   *
   * <p>At the prompt the answer takes further wings, porches, dormers and chimneys ({@code
   * home.dormer(FRONT, ft(8), ft(4), ft(6), ft(5))}), and gives its planes to be laid with sheets.
   *
   * <pre>{@code
   * house(HouseBody.length(ft(50)).width(ft(32)).rise(pitch(5)), Wing.at(ft(14)).width(ft(22)).out(ft(16))).area() // 2,114.67 sq ft
   * house(HouseBody.length(ft(42)).width(ft(30)).rise(pitch(6)).ends(GABLED), Wing.none()).rake() // 67' 1"
   * }</pre>
   *
   * @param body of the roof
   * @param wing at the front, or none
   * @return square feet of deck, and feet of ridges, hips, valleys, eaves and rakes, each once
   * @throws RefusedException if a number lies outside its range, a hip roof is wider than long, or
   *     the wing is as wide as the body
   * @see "derived: plan area times slope factor and theorem of Pythagoras"
   */
  @LibraryFunction(words = {"whole roof", "hip roof", "gable roof", "square", "hip length"})
  public static House house(HouseBody body, Wing wing) {
    HousePart atTheFront =
        new HousePart(
            HousePart.Kind.WING, HouseSide.FRONT, wing.at(), NOTHING, wing.width(), wing.out());
    return measured(new HousePlan(body, List.of(atTheFront)));
  }

  /** The house of a plan. */
  static House measured(HousePlan plan) {
    HouseBody body = plan.body();
    var slope = Slopes.slopeFactor(body.rise());
    var hips = Slopes.hipValleyFactor(body.rise());
    Condition isGabled = body.ends().choice().is(RoofEnds.GABLED);
    Condition isLongEnough = Condition.any(isGabled, body.length().isAtLeast(body.width()));
    var length =
        body.length()
            .onlyIf(
                isLongEnough,
                "a hip roof's ridge runs along its longer side: length_ft must not be less than"
                    + " width_ft; change the two round")
            .as("along_the_ridge_ft", Units.FOOT);
    var width = body.width();
    var around = length.plus(width).times(TWO).in(Units.FOOT);

    Figure<Area> onTheFlat = length.times(width).as("body_plan_sf", Units.SQUARE_FOOT);
    Figure<Length> ridge =
        Figure.choose(isGabled, length, length.minus(width)).as("body_ridge_ft", Units.FOOT);
    Figure<Length> valley = NOTHING;
    Figure<Length> eave =
        Figure.choose(isGabled, length.times(TWO).in(Units.FOOT), around)
            .as("body_eave_ft", Units.FOOT);
    Figure<Length> rake =
        Figure.choose(isGabled, width.times(TWO).times(slope).in(Units.FOOT), NOTHING)
            .as("body_rake_ft", Units.FOOT);
    for (HousePart part : plan.parts()) {
      var wide = fitting(part, width, part.isAtAnEnd() ? width : length);
      var deep = reach(part, wide);
      var both = deep.times(TWO).in(Units.FOOT);
      onTheFlat = onTheFlat.plus(planOf(part, wide));
      if (part.isGabled()) {
        ridge = ridge.plus(deep).plus(wide.dividedBy(TWO));
        valley = valley.plus(wide.times(hips));
        eave = eave.plus(both);
        rake = rake.plus(wide.times(slope));
      }
      switch (part.kind()) {
        case WING -> eave = eave.minus(wide);
        case PORCH -> rake = rake.plus(both.times(slope));
        case DORMER, CHIMNEY -> {}
      }
    }
    return new House(
        onTheFlat.times(slope).as("area_sf", Units.SQUARE_FOOT, ONE_SLOPE),
        ridge.as("ridge_ft", Units.FOOT, ONE_SLOPE),
        Figure.choose(isGabled, NOTHING, width.times(TWO).times(hips).in(Units.FOOT))
            .as("hip_ft", Units.FOOT, ONE_SLOPE),
        valley.as("valley_ft", Units.FOOT, ONE_SLOPE),
        eave.as("eave_ft", Units.FOOT, ONE_SLOPE),
        rake.as("rake_ft", Units.FOOT, ONE_SLOPE),
        plan);
  }

  /** How far a part reaches; one without width reaches nowhere. */
  private static Figure<Length> reach(HousePart part, Figure<Length> wide) {
    Figure<Length> deep = part.depth().in(Units.FOOT);
    return deep.onlyIf(
        Condition.any(wide.isMoreThan(NOTHING), deep.isAtMost(NOTHING)),
        "a %1$s without width reaches nowhere: give its width, or no reach".formatted(part.word()));
  }

  /** How wide a part is; one beyond its side or with a ridge as high as the body's is refused. */
  private static Figure<Length> fitting(HousePart part, Figure<Length> body, Figure<Length> side) {
    Figure<Length> wide = part.width().in(Units.FOOT);
    Condition isOnItsSide =
        Condition.all(part.at().isAtLeast(NOTHING), part.at().plus(wide).isAtMost(side));
    Figure<Length> placed =
        wide.onlyIf(
                isOnItsSide,
                "the %s reaches beyond the %s: its place and its width together are more than that side"
                    .formatted(part.word(), part.side().word()))
            .as(part.word() + "_width_ft", Units.FOOT);
    return part.isGabled()
        ? placed.onlyIf(
            wide.isLessThan(body),
            "a %s is narrower than the body, so that its ridge stays below the body's"
                .formatted(part.word()))
        : placed;
  }

  /** What a part adds to the plan; a dormer covers what it takes. */
  private static Figure<Area> planOf(HousePart part, Figure<Length> wide) {
    Figure<Area> size = wide.times(part.depth()).in(Units.SQUARE_FOOT);
    return switch (part.kind()) {
      case WING, PORCH -> size;
      case DORMER -> NO_AREA;
      case CHIMNEY -> NO_AREA.minus(size);
    };
  }
}
