package sheathwright.roof;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * A roof plane: its name, its shape as it lies, and what that was measured from. Lengths up the
 * slope are along the wood; {@code slopeLength(run, rise)} makes one of a plan.
 */
public final class Plane {

  private static final Figure<Length> NO_LEAN = Figure.of(0, Units.FOOT);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private final String name;
  private final Outline outline;
  private final List<Box> openings;
  private final List<Solution.Input> given;
  private final PlaneMeasures measures;
  private final Figure<Area> area;

  private Plane(
      String name,
      Outline outline,
      List<Box> openings,
      List<Solution.Input> given,
      PlaneMeasures measures,
      Figure<Area> area) {
    this.name = name;
    this.outline = outline;
    this.openings = openings;
    this.given = given;
    this.measures = measures;
    this.area = area;
  }

  /** A plane between two rakes. */
  public static Plane rectangle(String name, Figure<Length> eave, Figure<Length> slopeLength) {
    return trapezoid(name, eave, slopeLength, NO_LEAN, NO_LEAN);
  }

  /** The end of a hip roof: its two hips meet over the middle of the eave. */
  public static Plane triangle(String name, Figure<Length> eave, Figure<Length> slopeLength) {
    Figure<Length> half = eave.dividedBy(TWO).in(Units.FOOT);
    return trapezoid(name, eave, slopeLength, half, half);
  }

  /**
   * A plane between a level eave and a level ridge.
   *
   * @param leftLean how far the left side leans in at the ridge, along the eave: 0 for a rake, less
   *     for a valley
   * @param rightLean the same of the right side
   */
  public static Plane trapezoid(
      String name,
      Figure<Length> eave,
      Figure<Length> slopeLength,
      Figure<Length> leftLean,
      Figure<Length> rightLean) {
    PlaneMeasures measures =
        Planes.planeMeasures(
            PlaneSize.eave(eave).slope(slopeLength), Leans.left(leftLean).right(rightLean));
    measures.area().value(); // refuses here what it must
    Outline outline =
        Outline.trapezoid(inches(eave), inches(slopeLength), inches(leftLean), inches(rightLean));
    List<Solution.Input> given = new ArrayList<>();
    given.add(new Solution.Input("eave of " + name, eave));
    given.add(new Solution.Input("slope length of " + name, slopeLength));
    if (leftLean != NO_LEAN || rightLean != NO_LEAN) {
      given.add(new Solution.Input("left lean of " + name, leftLean));
      given.add(new Solution.Input("right lean of " + name, rightLean));
    }
    return new Plane(name, outline, List.of(), given, measures, measures.area());
  }

  /**
   * A plane of any shape.
   *
   * @param cornersInFeet in order round the plane, feet along the eave and up the slope: {@code "0
   *     0, 40 0, 28 12, 12 12"}
   */
  public static Plane outline(String name, String cornersInFeet) {
    return outline(name, typed(name, cornersInFeet));
  }

  /** A plane of any shape, its corners in a cell: {@code 0 0, 40 0, 28 12, 12 12}. */
  public static Plane outline(String name, Choice<String> cornersInFeet) {
    return outline(name, cornersInFeet, 1, List.of());
  }

  /**
   * A plane of any shape from a plan.
   *
   * @param cornersInFeet in order round the plane, feet along the eave and level feet toward the
   *     ridge
   * @param rise rise in 12 of run
   */
  public static Plane outlineOfPlan(String name, String cornersInFeet, Figure<Ratio> rise) {
    return outline(
        name,
        typed(name, cornersInFeet),
        Slopes.slopeFactor(rise).value(),
        List.of(new Solution.Input("rise of " + name, rise)));
  }

  private static Choice<String> typed(String name, String corners) {
    return Choice.literal(corners).as(name + "_corners_ft");
  }

  private static Plane outline(
      String name, Choice<String> corners, double upward, List<Solution.Input> more) {
    List<Spot> spots = new ArrayList<>();
    for (String corner : corners.value().strip().split("\\s*[,;]\\s*")) {
      String[] parts = corner.split("\\s+");
      if (parts.length != 2) {
        throw new RefusedException(
            "\"%s\" is not a corner; give feet along the eave and feet up the slope with a blank between: 0 0, 40 0, 28 12, 12 12"
                .formatted(corner));
      }
      spots.add(
          new Spot(Lengths.inchesFromFeet(parts[0]), Lengths.inchesFromFeet(parts[1]) * upward));
    }
    Outline outline = Outline.of(spots);
    List<Solution.Input> given = new ArrayList<>(more);
    given.add(new Solution.Input("corners of " + name, corners));
    PlaneMeasures measures = solved(name, outline, given);
    return new Plane(name, outline, List.of(), given, measures, measures.area());
  }

  private static PlaneMeasures solved(String name, Outline outline, List<Solution.Input> given) {
    Solution solution = Solution.of(name + "_outline", given);
    Source source = Source.derived("sides and area of the outline");
    Map<Edge.Kind, Double> feet = new EnumMap<>(Edge.Kind.class);
    outline.edges().forEach(edge -> feet.merge(edge.kind(), edge.length() / 12, Double::sum));
    return new PlaneMeasures(
        solution.figure("area_sf", outline.area() / 144, Units.SQUARE_FOOT, source),
        solution.figure("ridge_ft", feet.getOrDefault(Edge.Kind.RIDGE, 0d), Units.FOOT, source),
        solution.figure("hip_ft", feet.getOrDefault(Edge.Kind.HIP, 0d), Units.FOOT, source),
        solution.figure("valley_ft", feet.getOrDefault(Edge.Kind.VALLEY, 0d), Units.FOOT, source),
        solution.figure("rake_ft", feet.getOrDefault(Edge.Kind.RAKE, 0d), Units.FOOT, source));
  }

  /**
   * This plane with an opening.
   *
   * @param along from the plane's left corner to the opening's left side, along the eave
   * @param up from the eave to the opening's lower side
   * @param width along the eave
   * @param height up the slope
   * @throws RefusedException if it reaches off the plane or into another opening
   */
  public Plane without(
      Figure<Length> along, Figure<Length> up, Figure<Length> width, Figure<Length> height) {
    Box opening = Box.at(inches(along), inches(up), inches(width), inches(height));
    List<Box> all = new ArrayList<>(openings);
    all.add(opening);
    List<Solution.Input> more = new ArrayList<>(given);
    String which = "opening " + all.size() + " of " + name;
    more.add(new Solution.Input(which + ", along the eave", along));
    more.add(new Solution.Input(which + ", up the slope", up));
    more.add(new Solution.Input(which + ", width", width));
    more.add(new Solution.Input(which + ", height", height));
    return new Plane(
        name,
        outline.without(opening),
        List.copyOf(all),
        List.copyOf(more),
        measures,
        area.minus(width.times(height)).as("deck_area_sf", Units.SQUARE_FOOT));
  }

  /**
   * This plane with an opening of any shape.
   *
   * @param corners in order round it
   * @param size its area on the slope
   * @throws RefusedException if it reaches off the plane or into another opening
   */
  Plane without(List<Spot> corners, Figure<Area> size) {
    return new Plane(
        name,
        outline.without(corners),
        openings,
        given,
        measures,
        area.minus(size).as("deck_area_sf", Units.SQUARE_FOOT));
  }

  /** The same plane, which rests on this as well: on which lines of a table tell of it. */
  public Plane given(Solution.Input more) {
    List<Solution.Input> all = new ArrayList<>(given);
    all.add(more);
    return new Plane(name, outline, openings, List.copyOf(all), measures, area);
  }

  public String name() {
    return name;
  }

  /** Its shape, openings cut out. */
  public Outline outline() {
    return outline;
  }

  /** Its openings, in inches. */
  public List<Box> openings() {
    return openings;
  }

  /** Everything that it was measured from. */
  public List<Solution.Input> given() {
    return given;
  }

  /** Its area with openings, and how long its sides are. */
  public PlaneMeasures measures() {
    return measures;
  }

  /** Its area, openings taken off. */
  public Figure<Area> area() {
    return area;
  }

  @Override
  public String toString() {
    return "plane %s, %s%s"
        .formatted(
            name,
            area.shown(),
            openings.isEmpty()
                ? ""
                : openings.size() == 1 ? ", 1 opening" : ", " + openings.size() + " openings");
  }

  private static double inches(Figure<? extends Quantity> length) {
    return length.in(Units.INCH).value();
  }
}
