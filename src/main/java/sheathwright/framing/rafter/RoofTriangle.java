package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * A rafter from plate to ridge, and the tie that keeps the walls from spreading.
 *
 * @param span clear span on the horizontal projection
 * @param rise tan θ; 3 gives the greatest thrust that rafters without a ridge beam have
 * @param tieHeight H_C of the rafter ties above the plate
 */
public record RoofTriangle(
    @Column(
            value = "span_ft",
            least = ClearSpan.LEAST_FT,
            most = ClearSpan.MOST_FT,
            rule = ClearSpan.RULE)
        Figure<Length> span,
    @Column(
            value = "rise_in_12",
            preset = "3",
            least = 1,
            most = 24,
            rule = "below 3 a ridge beam holds the rafters up and there is no thrust",
            symbol = "tan θ")
        Figure<Ratio> rise,
    @Column(
            value = "tie_height_in",
            preset = "0",
            least = 0,
            most = 120,
            rule = "0 where it sits on the plate")
        Figure<Length> tieHeight) {

  private static final Columns COLUMNS = Columns.of(RoofTriangle.class);

  public RoofTriangle {
    span = COLUMNS.let("span", span);
    rise = COLUMNS.let("rise", rise);
    tieHeight = COLUMNS.let("tieHeight", tieHeight);
  }

  /** So wide, on the slope with the greatest thrust, with its ties on the plate. */
  public static RoofTriangle span(Figure<Length> clear) {
    return new RoofTriangle(clear, null, null);
  }

  public RoofTriangle rise(Figure<Ratio> slope) {
    return new RoofTriangle(span, slope, tieHeight);
  }

  public RoofTriangle tieHeight(Figure<Length> aboveThePlate) {
    return new RoofTriangle(span, rise, aboveThePlate);
  }
}
