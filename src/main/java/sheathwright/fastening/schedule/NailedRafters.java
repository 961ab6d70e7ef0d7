package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.roof.SupportSpacing;
import sheathwright.wood.Nds;

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
            least = SupportSpacing.LEAST_IN,
            most = SupportSpacing.MOST_IN,
            rule = SupportSpacing.RULE)
        Figure<Length> spacing,
    @Column(
            value = "specific_gravity",
            preset = "0.36",
            least = Nds.LEAST_GRAVITY,
            most = Nds.MOST_GRAVITY,
            rule = Nds.GRAVITY_RULE)
        Figure<Ratio> gravity) {

  private static final Columns COLUMNS = Columns.of(NailedRafters.class);

  public NailedRafters {
    spacing = COLUMNS.let("spacing", spacing);
    gravity = COLUMNS.let("gravity", gravity);
  }

  /** Rafters this far apart, of wood that nobody knows: the lightest that is listed. */
  public static NailedRafters spacing(Figure<Length> centers) {
    return new NailedRafters(centers, null);
  }

  public NailedRafters gravity(Figure<Ratio> g) {
    return new NailedRafters(spacing, g);
  }
}
