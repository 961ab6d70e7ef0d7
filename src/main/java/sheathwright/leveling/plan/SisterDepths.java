package sheathwright.leveling.plan;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;
import sheathwright.wood.DressedSizes;

/**
 * How deep sister and old rafter stand.
 *
 * @param sister dressed depth of its nominal size
 * @param rafter dressed depth of its nominal size
 */
record SisterDepths(Figure<Length> sister, Figure<Length> rafter) {

  static SisterDepths of(SisterRules rules) {
    return new SisterDepths(
        DressedSizes.width(rules.size()).as("sister_depth_in", Units.INCH),
        DressedSizes.width(rules.rafterSize()).as("rafter_depth_in", Units.INCH));
  }
}
