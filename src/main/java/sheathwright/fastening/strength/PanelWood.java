package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.wood.Nds;

/**
 * A panel as wood that a screw holds in or a head is pulled through.
 *
 * @param gravity G of the panel
 * @param thickness t of the panel
 */
public record PanelWood(
    @Column(
            value = "specific_gravity",
            least = Nds.LEAST_GRAVITY,
            most = Nds.MOST_GRAVITY,
            rule = Nds.GRAVITY_RULE,
            symbol = "G")
        Figure<Ratio> gravity,
    @Column(
            value = "thickness_in",
            least = HeldLayer.LEAST_IN,
            most = HeldLayer.MOST_IN,
            rule = HeldLayer.RULE,
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
