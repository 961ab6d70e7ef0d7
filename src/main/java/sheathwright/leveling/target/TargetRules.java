package sheathwright.leveling.target;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.leveling.string.StringReading;

/**
 * What rafters are brought to.
 *
 * @param shape one plane, a line over each rafter, or the string itself
 * @param objective what is made least
 * @param cap no build-up is to be more, if there is such a limit
 * @param bounds least and most build-up at single readings: eaves, valleys and other tie-ins
 */
public record TargetRules(
    Shape shape,
    OneOf<TargetObjective> objective,
    Optional<Figure<Length>> cap,
    Map<StringReading, List<Figure<Length>>> bounds) {

  /** What the new surface is made of. */
  public enum Shape implements Option<Shape> {
    /** One flat plane over all rafters. */
    PLANE,
    /** A straight line over each. */
    LINES,
    /** The string as it was drawn: wood above it is planed down. */
    STRING
  }

  /** A line over each rafter with the least build-up in all, bound by nothing. */
  public static TargetRules usual() {
    return new TargetRules(Shape.LINES, TargetObjective.TOTAL, Optional.empty(), Map.of());
  }

  public LevelTarget solved(String plane, List<TargetPoint> points) {
    Choice<TargetObjective> least = objective.choice();
    return switch (shape) {
      case PLANE -> Targets.plane(plane, points, least, cap);
      case LINES -> Targets.lines(plane, points, least, cap);
      case STRING -> Targets.string(plane, points, least, cap);
    };
  }

  public TargetPoint bound(StringReading reading, TargetPoint point) {
    List<Figure<Length>> two = bounds.get(reading);
    return two == null ? point : point.within(two.get(0), two.get(1));
  }
}
