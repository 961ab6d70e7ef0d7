package sheathwright.leveling.target;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/**
 * A reading as figures: a place on the old rafters, its height, and what may be built up there.
 *
 * @param name what it is called when it has changed or clashes: {@code rafter 3 at 6 ft}
 * @param x across the rafters
 * @param y up the slope
 * @param z above the string, low wood negative
 * @param bounds of the build-up, least and most; empty where any build-up will do
 */
public record TargetPoint(
    String name,
    Figure<Length> x,
    Figure<Length> y,
    Figure<Length> z,
    List<Figure<Length>> bounds) {

  /** A reading at which any build-up will do. */
  public static TargetPoint of(String name, Figure<Length> x, Figure<Length> y, Figure<Length> z) {
    return new TargetPoint(name, x, y, z, List.of());
  }

  /** The same with bounds of the build-up. */
  public TargetPoint within(Figure<Length> least, Figure<Length> most) {
    return new TargetPoint(name, x, y, z, List.of(least, most));
  }

  /** The same where the new surface meets something that stays: the build-up is just so much. */
  public TargetPoint tiedIn(Figure<Length> buildUp) {
    return within(buildUp, buildUp);
  }

  /** What was measured and asked, read. */
  TargetReading plain(Reading reading) {
    TargetReading plain =
        TargetReading.of(
            name,
            reading.number(name + ", across", x, Units.INCH),
            reading.number(name + ", up the slope", y, Units.INCH),
            reading.number(name + ", height", z, Units.INCH));
    List<Double> limits =
        bounds.stream()
            .map(bound -> reading.number(name + ", bound of build-up", bound, Units.INCH))
            .toList();
    return limits.isEmpty()
        ? plain
        : RefusedException.solvedFor(bounds, () -> plain.within(limits.get(0), limits.get(1)));
  }
}
