package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * A panel as wood that a screw holds in or a head is pulled through.
 *
 * @param gravity G of the panel
 * @param thickness t of the panel
 */
public record PanelWood(
    @Column(
            value = "specific_gravity",
            least = 0.2,
            most = 0.8,
            rule = "OSB has 0.50",
            symbol = "G")
        Figure<Ratio> gravity,
    @Column(
            value = "thickness_in",
            least = 0.05,
            most = 3,
            rule = "7/16 and 15/32 are usual",
            symbol = "t")
        Figure<Length> thickness) {

  private static final Columns COLUMNS = Columns.of(PanelWood.class);

  public PanelWood {
    gravity = COLUMNS.let("gravity", gravity);
    thickness = COLUMNS.let("thickness", thickness);
  }

  /** A panel of this specific gravity and thickness. */
  public static PanelWood of(Figure<Ratio> gravity, Figure<Length> thickness) {
    return new PanelWood(gravity, thickness);
  }
}
