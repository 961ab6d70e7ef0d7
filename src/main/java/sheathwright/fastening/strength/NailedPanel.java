package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.wood.Nds;

/**
 * A panel that is nailed down, whose wood a nail's head can be pulled through.
 *
 * @param layer its thickness, and what lies below it
 * @param gravity G of the panel
 */
public record NailedPanel(
    HeldLayer layer,
    @Column(
            value = "panel_gravity",
            least = Nds.LEAST_GRAVITY,
            most = Nds.MOST_GRAVITY,
            rule = Nds.GRAVITY_RULE)
        Figure<Ratio> gravity) {

  private static final Columns COLUMNS = Columns.of(NailedPanel.class);

  public NailedPanel {
    layer = layer == null ? HeldLayer.thickness(null) : layer;
    gravity = COLUMNS.let("gravity", gravity);
  }

  /** A panel of this thickness that lies on the rafter; its gravity is still to be said. */
  public static NailedPanel thickness(Figure<Length> inches) {
    return new NailedPanel(HeldLayer.thickness(inches), null);
  }

  public NailedPanel gravity(Figure<Ratio> g) {
    return new NailedPanel(layer, g);
  }

  public NailedPanel shim(Figure<Length> below) {
    return new NailedPanel(layer.shim(below), gravity);
  }
}
