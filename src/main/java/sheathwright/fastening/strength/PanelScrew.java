package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A screw that holds in the thickness of a panel only.
 *
 * @param diameter D over the thread
 * @param point the part of the screw's point inside the panel; 0 if it comes through
 */
public record PanelScrew(
    @Column(
            value = "diameter_in",
            least = 0.05,
            most = 0.5,
            rule = "a #10 screw has 0.19",
            symbol = "D")
        Figure<Length> diameter,
    @Column(
            value = "point_in",
            preset = "0",
            least = 0,
            most = 1,
            rule = "0 if the point comes through")
        Figure<Length> point) {

  private static final Columns COLUMNS = Columns.of(PanelScrew.class);

  public PanelScrew {
    diameter = COLUMNS.let("diameter", diameter);
    point = COLUMNS.let("point", point);
  }

  /** A screw of this diameter whose point comes through. */
  public static PanelScrew diameter(Figure<Length> across) {
    return new PanelScrew(across, null);
  }

  public PanelScrew point(Figure<Length> inside) {
    return new PanelScrew(diameter, inside);
  }
}
