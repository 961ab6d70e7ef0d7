package sheathwright.leveling.string;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;

/** Where rafters stand if they stand at one spacing; measured ones are handed in as measured. */
public final class RafterCenters {

  private RafterCenters() {}

  /**
   * The center of one rafter.
   *
   * @param number counted from 1 at the left
   * @param first center of the first, from the plane's left edge
   * @param spacing center to center
   */
  public static Figure<Length> regular(int number, Figure<Length> first, Figure<Length> spacing) {
    Figure<Ratio> before = Figure.of(number - 1, Units.RATIO);
    return first.plus(before.times(spacing)).in(Units.INCH);
  }
}
