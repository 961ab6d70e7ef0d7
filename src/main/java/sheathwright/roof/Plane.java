package sheathwright.roof;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Lengths;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
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
  private final Reading reading;
  private final PlaneMeasures measures;
  private final Figure<Area> area;

  private Plane(
      String name,
      Outline outline,
      List<Box> openings,
      Reading reading,
      PlaneMeasures measures,
      Figure<Area> area) {
    this.name = name;
    this.outline = outline;
    this.openings = openings;
    this.reading = reading;
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
    Reading.aside().number("area of " + name, measures.area(), Units.SQUARE_FOOT); // or refuses
    Reading reading = new Reading();
    double along = inches(reading, "eave of " + name, eave);
    double up = inches(reading, "slope length of " + name, slopeLength);
    boolean leans = leftLean != NO_LEAN; // a rectangle has neither
    Outline outline =
        Outline.trapezoid(
            along,
            up,
            leans ? inches(reading, "left lean of " + name, leftLean) : 0,
            leans ? inches(reading, "right lean of " + name, rightLean) : 0);
    return new Plane(name, outline, List.of(), reading, measures, measures.area());
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
    return outline(name, cornersInFeet, 1, new Reading());
  }

  /**
   * A plane of any shape from a plan.
   *
   * @param cornersInFeet in order round the plane, feet along the eave and level feet toward the
   *     ridge
   * @param rise rise in 12 of run
   */
  public static Plane outlineOfPlan(String name, String cornersInFeet, Figure<Ratio> rise) {
    Reading reading = new Reading();
    double upward = reading.number("rise of " + name, Slopes.slopeFactor(rise), Units.RATIO);
    return outline(name, typed(name, cornersInFeet), upward, reading);
  }

  private static Choice<String> typed(String name, String corners) {
    return Choice.literal(corners).as(name + "_corners_ft");
  }

  private static Plane outline(
      String name, Choice<String> corners, double upward, Reading reading) {
    List<Spot> spots = new ArrayList<>();
    String all = reading.word("corners of " + name, corners);
    for (String corner : all.strip().split("\\s*[,;]\\s*")) {
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
    PlaneMeasures measures = measures(outline, reading.solution(name + "_outline"));
    return new Plane(name, outline, List.of(), reading, measures, measures.area());
  }

  private static PlaneMeasures measures(Outline outline, Solution solution) {
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
    Reading more = new Reading().and(reading);
    String which = "opening " + (openings.size() + 1) + " of " + name;
    Box opening =
        Box.at(
            inches(more, which + ", along the eave", along),
            inches(more, which + ", up the slope", up),
            inches(more, which + ", width", width),
            inches(more, which + ", height", height));
    List<Box> all = new ArrayList<>(openings);
    all.add(opening);
    return new Plane(
        name,
        outline.without(opening),
        List.copyOf(all),
        more,
        measures,
        area.minus(width.times(height)).as("deck_area_sf", Units.SQUARE_FOOT));
  }

  /**
   * The same plane, which rests on this as well: on which lines of a table tell of it.
   *
   * @param label what that is called when it has changed
   */
  public Plane restingOn(String label, Choice<String> state) {
    Reading more = new Reading();
    more.word(label, state);
    return restingOn(more);
  }

  /** The same plane, which rests on all that was read here as well. */
  Plane restingOn(Reading more) {
    return new Plane(name, outline, openings, new Reading().and(reading).and(more), measures, area);
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
        reading,
        measures,
        area.minus(size).as("deck_area_sf", Units.SQUARE_FOOT));
  }

  public String name() {
    return name;
  }

  /** Its shape, openings cut out. */
  public Outline outline(Reading solving) {
    solving.and(reading);
    return outline;
  }

  /** Its openings, in inches. */
  public List<Box> openings(Reading solving) {
    solving.and(reading);
    return openings;
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

  private static double inches(Reading reading, String label, Figure<Length> length) {
    return reading.number(label, length, Units.INCH);
  }
}
