package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * The rafters that a roof panel is nailed to.
 *
 * @param spacing center to center of the rafters or trusses
 * @param gravity G of the rafters; matters since 2024
 */
public record NailedRafters(
    @Column(
            value = "support_spacing_in",
            preset = "24",
            least = 6,
            most = 96,
            rule = "16, 19.2 and 24 are usual")
        Figure<Length> spacing,
    @Column(
            value = "specific_gravity",
            preset = "0.42",
            least = 0.2,
            most = 0.8,
            rule = "spruce-pine-fir has 0.42")
        Figure<Ratio> gravity) {

  private static final Columns COLUMNS = Columns.of(NailedRafters.class);

  public NailedRafters {
    spacing = COLUMNS.let("spacing", spacing);
    gravity = COLUMNS.let("gravity", gravity);
  }

  /** Rafters this far apart, of spruce-pine-fir. */
  public static NailedRafters spacing(Figure<Length> centers) {
    return new NailedRafters(centers, null);
  }

  public NailedRafters gravity(Figure<Ratio> g) {
    return new NailedRafters(spacing, g);
  }
}
