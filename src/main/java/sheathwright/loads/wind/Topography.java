package sheathwright.loads.wind;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;

/**
 * What hills do to the wind at a site.
 *
 * @param factor 1 on level ground
 */
public record Topography(
    @Column(
            value = "kzt",
            preset = "1",
            least = 1,
            most = 3,
            rule = "1 on level ground, more on hills",
            symbol = "K_zt")
        Figure<Ratio> factor) {

  private static final Columns COLUMNS = Columns.of(Topography.class);

  /** No hill near. */
  public static final Topography LEVEL_GROUND = new Topography(null);

  public Topography {
    factor = COLUMNS.let("factor", factor);
  }

  /** Hills that raise the pressure by this factor. */
  public static Topography factor(Figure<Ratio> kzt) {
    return new Topography(kzt);
  }
}
