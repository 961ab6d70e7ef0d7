package sheathwright.loads;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;

/**
 * Loads that a rafter bears at one time, and how long the wood must bear them.
 *
 * @param name which loads
 * @param load all of them together on the horizontal projection; below zero it pulls up
 * @param durationFactor C_D of the shortest of them
 * @param byDuration the load divided by its factor, whose size says which combination asks most of
 *     the wood
 */
public record LoadCombination(
    Choice<Name> name,
    Figure<Pressure> load,
    Figure<Ratio> durationFactor,
    Figure<Pressure> byDuration) {

  /** Which loads stand together. */
  public enum Name implements Option<Name> {
    DEAD_ALONE,
    DEAD_AND_ROOF_LIVE,
    DEAD_AND_SNOW,
    DEAD_AND_UPLIFT
  }

  @Override
  public String toString() {
    return "%s: %s, C_D %s".formatted(name, load, durationFactor);
  }
}
