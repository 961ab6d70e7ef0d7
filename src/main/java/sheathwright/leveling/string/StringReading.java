package sheathwright.leveling.string;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;

/**
 * One reading under a string.
 *
 * @param rafter its name on the plane
 * @param center of the rafter from the plane's left edge
 * @param up station from the eave up the slope
 * @param reading string to wood
 * @param place along the string from its lower block
 * @param stringSag how far the string itself hangs there
 * @param drop below the straight line between the blocks, low positive
 */
public record StringReading(
    String rafter,
    Figure<Length> center,
    Figure<Length> up,
    Figure<Length> reading,
    Figure<Length> place,
    Figure<Length> stringSag,
    Figure<Length> drop) {

  private static final Figure<Length> NO_SAG = Figure.of(0, Units.INCH);

  private static final Figure<Length> NO_PLACE = Figure.of(0, Units.FOOT);

  /** A drop that was read as such: with a laser, or over blocks already taken off. */
  public static StringReading ofDrop(
      String rafter, Figure<Length> center, Figure<Length> up, Figure<Length> drop) {
    return new StringReading(rafter, center, up, drop, NO_PLACE, NO_SAG, drop);
  }

  RafterStation station() {
    return new RafterStation(up, drop);
  }
}
