package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How high a roof stands in the wind.
 *
 * @param mean mean roof height, between eave and ridge; under 15 ft pressures are those at 15 ft
 */
public record RoofHeight(
    @Column(
            value = "height_ft",
            least = 1,
            most = 60,
            rule = "mean roof height; a story is about 10")
        Figure<Length> mean) {

  private static final Columns COLUMNS = Columns.of(RoofHeight.class);

  public RoofHeight {
    mean = COLUMNS.let("mean", mean);
  }

  /** A roof whose mean height this is, as {@code mean_roof_height} gives it. */
  public static RoofHeight mean(Figure<Length> feet) {
    return new RoofHeight(feet);
  }
}
