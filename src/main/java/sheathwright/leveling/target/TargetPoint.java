package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
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

  /** As plain numbers. */
  TargetReading reading() {
    TargetReading reading = TargetReading.of(name, inches(x), inches(y), inches(z));
    return bounds.isEmpty()
        ? reading
        : RefusedException.solvedFor(
            bounds, () -> reading.within(inches(bounds.get(0)), inches(bounds.get(1))));
  }

  static double inches(Figure<Length> length) {
    return length.in(Units.INCH).value();
  }

  /** What was measured and asked. */
  List<Solution.Input> given() {
    List<Solution.Input> given = new ArrayList<>();
    given.add(new Solution.Input(name + ", across", x));
    given.add(new Solution.Input(name + ", up the slope", y));
    given.add(new Solution.Input(name + ", height", z));
    bounds.forEach(bound -> given.add(new Solution.Input(name + ", bound of build-up", bound)));
    return given;
  }
}
