package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * What a fastener holds down on a rafter.
 *
 * @param thickness of what is held down
 * @param shim between it and the rafter, not counted as holding wood
 */
public record HeldLayer(
    @Column(
            value = "thickness_in",
            least = HeldLayer.LEAST_IN,
            most = HeldLayer.MOST_IN,
            rule = HeldLayer.RULE,
            symbol = "t")
        Figure<Length> thickness,
    @Column(value = "shim_in", preset = "0", least = 0, most = 3, rule = "0 if there is none")
        Figure<Length> shim) {

  /** The range of the thickness of what is held down, wherever it is a column. */
  static final double LEAST_IN = 0.05;

  static final double MOST_IN = 3;
  static final String RULE = "7/16 and 15/32 are usual";

  private static final Columns COLUMNS = Columns.of(HeldLayer.class);

  public HeldLayer {
    thickness = COLUMNS.let("thickness", thickness);
    shim = COLUMNS.let("shim", shim);
  }

  /** A layer of this thickness that lies on the rafter, without a shim. */
  public static HeldLayer thickness(Figure<Length> inches) {
    return new HeldLayer(inches, null);
  }

  public HeldLayer shim(Figure<Length> below) {
    return new HeldLayer(thickness, below);
  }
}
