package sheathwright.leveling.target;

import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;

/**
 * A place on the old rafters whose height is known, and how much may be built up there.
 *
 * @param name what it is called when it clashes with another
 * @param x inches across the rafters
 * @param y inches up the slope
 * @param z inches above the string, low wood negative
 * @param least build-up, in inches, 0 or more; the same as {@code most} where the new surface is
 *     tied in
 * @param most build-up, in inches; infinite where nothing limits it
 */
public record TargetReading(String name, double x, double y, double z, double least, double most) {

  /** No limit of the build-up. */
  public static final double UNLIMITED = Double.POSITIVE_INFINITY;

  public TargetReading {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new RefusedException(name + ": its place and height must be numbers");
    }
    if (!(least >= 0) || Double.isInfinite(least) || !(most >= least)) {
      throw new RefusedException(
          "%s: the build-up is to be from %s to %s in; it must begin at 0 or more and not end below that"
              .formatted(name, said(least), said(most)));
    }
  }

  static String said(double number) {
    return Double.isFinite(number) ? Shown.plain(number) : String.valueOf(number);
  }

  /** A reading at which any build-up will do. */
  public static TargetReading of(String name, double x, double y, double z) {
    return new TargetReading(name, x, y, z, 0, UNLIMITED);
  }

  /** The same with bounds of the build-up. */
  public TargetReading within(double leastBuildUp, double mostBuildUp) {
    return new TargetReading(name, x, y, z, leastBuildUp, mostBuildUp);
  }

  /** The same in another place. */
  TargetReading at(double otherX, double otherY) {
    return new TargetReading(name, otherX, otherY, z, least, most);
  }
}
