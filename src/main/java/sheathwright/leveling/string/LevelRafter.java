package sheathwright.leveling.string;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.leveling.string.Profile.Stretch;

/**
 * A rafter that is to be brought to a target.
 *
 * @param buildUp from the wood up to the target at each station, negative where the wood is higher
 * @param lower its lower bearing, from the eave up the slope
 * @param upper its upper bearing, from the eave up the slope
 */
public record LevelRafter(RafterProfile buildUp, Figure<Length> lower, Figure<Length> upper) {

  public LevelRafter {
    Stretch bearings = bearings(Reading.aside(), buildUp.rafter(), lower, upper);
    if (bearings.to() <= bearings.from()) {
      throw new RefusedException(
          "rafter %s has its upper bearing at %s, not above its lower one at %s"
              .formatted(buildUp.rafter(), upper, lower),
          List.of(upper, lower));
    }
  }

  /**
   * A rafter as plain inches.
   *
   * @param buildUp from the wood up to the target
   * @param bearings from bearing to bearing
   */
  public record Plain(RafterProfile.Plain buildUp, Stretch bearings) {

    /** Bearing to bearing, and as far beyond as it was read. */
    public Stretch wholeLength() {
      return new Stretch(
          Math.min(bearings.from(), buildUp.along().first()),
          Math.max(bearings.to(), buildUp.along().last()));
    }
  }

  /** Its build-ups and its bearings, read. */
  public Plain plain(Reading reading) {
    return new Plain(buildUp.plain(reading), bearings(reading, buildUp.rafter(), lower, upper));
  }

  private static Stretch bearings(
      Reading reading, String rafter, Figure<Length> lower, Figure<Length> upper) {
    return new Stretch(
        reading.number("lower bearing of rafter " + rafter, lower, Units.INCH),
        reading.number("upper bearing of rafter " + rafter, upper, Units.INCH));
  }
}
