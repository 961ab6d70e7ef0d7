package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
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
    if (upper.in(Units.INCH).value() <= lower.in(Units.INCH).value()) {
      throw new RefusedException(
          "rafter %s has its upper bearing at %s, not above its lower one at %s"
              .formatted(buildUp.rafter(), upper, lower),
          List.of(upper, lower));
    }
  }

  /** Bearing to bearing. */
  public Stretch bearings() {
    return new Stretch(lower.in(Units.INCH).value(), upper.in(Units.INCH).value());
  }

  /** Bearing to bearing, and as far beyond as it was read. */
  public Stretch wholeLength() {
    Profile profile = buildUp.inches();
    return new Stretch(
        Math.min(bearings().from(), profile.first()), Math.max(bearings().to(), profile.last()));
  }

  public List<Solution.Input> given() {
    List<Solution.Input> given = new ArrayList<>(buildUp.given());
    given.add(new Solution.Input("lower bearing of rafter " + buildUp.rafter(), lower));
    given.add(new Solution.Input("upper bearing of rafter " + buildUp.rafter(), upper));
    return given;
  }
}
