package sheathwright.sheathing.place;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;

/**
 * An end joint that somebody measured.
 *
 * @param course from the plane's lowest point, beginning with 1
 * @param along from the plane's left corner, along the eave
 */
public record MeasuredJoint(Figure<Ratio> course, Figure<Length> along) {

  /** As plain values, in inches. */
  record Plain(int course, double along) {}

  Plain plain(Reading reading, String which) {
    return new Plain(
        (int) reading.number("course of " + which, course, Units.RATIO),
        reading.number(which + ", along the eave", along, Units.INCH));
  }
}
