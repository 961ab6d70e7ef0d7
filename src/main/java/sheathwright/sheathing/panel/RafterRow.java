package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.roof.SupportSpacing;

/**
 * Rafters in a row, as panels lie on them.
 *
 * @param spacing center to center of the rafters or trusses
 * @param width across the top of the rafter
 */
public record RafterRow(
    @Column(
            value = "support_spacing_in",
            least = SupportSpacing.LEAST_IN,
            most = SupportSpacing.MOST_IN,
            rule = SupportSpacing.RULE)
        Figure<Length> spacing,
    @Column(
            value = "rafter_width_in",
            preset = "1.5",
            least = 1,
            most = 5,
            rule = "2x stock has 1.5")
        Figure<Length> width) {

  private static final Columns COLUMNS = Columns.of(RafterRow.class);

  public RafterRow {
    spacing = COLUMNS.let("spacing", spacing);
    width = COLUMNS.let("width", width);
  }

  /** Rafters so far apart, of 2x stock unless their width is said. */
  public static RafterRow spacing(Figure<Length> given) {
    return new RafterRow(given, null);
  }

  public RafterRow width(Figure<Length> given) {
    return new RafterRow(spacing, given);
  }
}
