package sheathwright.leveling.string;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;

/**
 * A string over one rafter or more of the same length, on a block at each end.
 *
 * @param start how far up the slope its lower block stands
 * @param length from block to block
 * @param block height of both blocks
 * @param weight of the string
 * @param tension that it is pulled with
 */
public record StringLine(
    Figure<Length> start,
    Figure<Length> length,
    Figure<Length> block,
    Figure<LineForce> weight,
    Figure<Force> tension) {

  /**
   * A string whose numbers lie within the limits of {@code string_sag} and {@code
   * drop_below_string}.
   */
  public StringLine {
    TightString string = TightString.length(length).weight(weight).tension(tension);
    length = string.length();
    weight = string.weight();
    tension = string.tension();
    block = RawReading.ofBlocks(block);
    start =
        start.within(
            "string_start_ft", Units.FOOT, Limits.between(-20, 200, "from the eave up the slope"));
  }

  /**
   * A reading under this string.
   *
   * @param rafter its name on the plane
   * @param center of the rafter from the plane's left edge
   * @param up station from the eave up the slope
   * @param reading string to wood
   * @throws RefusedException if the station lies beyond either end of the string
   */
  public StringReading read(
      String rafter, Figure<Length> center, Figure<Length> up, Figure<Length> reading) {
    Figure<Length> place = up.in(Units.FOOT).minus(start).in(Units.FOOT);
    if (place.value() < 0 || place.value() > length.value()) {
      throw new RefusedException(
          "rafter %s was read at %s, past the string, which starts at %s and is %s long"
              .formatted(rafter, up, start, length),
          List.of(up, start, length));
    }
    Figure<Length> sag = StringLines.sag(length, place, weight, tension).in(Units.INCH);
    Figure<Length> drop = StringLines.drop(reading.in(Units.INCH), block, sag);
    return new StringReading(rafter, center, up, reading, place, sag, drop);
  }
}
