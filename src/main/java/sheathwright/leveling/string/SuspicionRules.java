package sheathwright.leveling.string;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * When a reading is read again: it departs from what its neighbors say by more than a multiple of
 * the usual departure round it, by more than a floor, and by more than a part of the drops beside
 * it: the deeper the wood lies there, the more it is bent between two stations.
 *
 * @param multiple of the usual departure, 1 to 50
 * @param floor under which nothing is suspected, 0 in to 6 in
 * @param part of the greatest drop or rise beside it, 0 to 1
 */
public record SuspicionRules(Figure<Ratio> multiple, Figure<Length> floor, Figure<Ratio> part) {

  private static final Source OURS =
      new Source("rule of this library", Source.Mark.COMMON_PRACTICE);

  /** The rules as plain values, the floor in inches. */
  record Plain(double multiple, double floor, double part) {}

  /** Every rule, read. */
  Plain plain(Reading reading) {
    return new Plain(
        reading.number("how many times the usual deviation is suspect", multiple, Units.RATIO),
        reading.number("the deviation below which no reading is suspect", floor, Units.INCH),
        reading.number(
            "the part of the drops beside it that a reading may deviate", part, Units.RATIO));
  }

  /** Five times the usual departure, a quarter of an inch, two fifths: our own numbers. */
  public static SuspicionRules usual() {
    return new SuspicionRules(
        Figure.input(
            "suspicion_multiple", 5, Units.RATIO, Limits.between(1, 50, "5 is usual"), OURS),
        Figure.input(
            "suspicion_floor_in", 0.25, Units.INCH, Limits.between(0, 6, "1/4 is usual"), OURS),
        Figure.input(
            "suspicion_part", 0.4, Units.RATIO, Limits.between(0, 1, "0.4 is usual"), OURS));
  }
}
