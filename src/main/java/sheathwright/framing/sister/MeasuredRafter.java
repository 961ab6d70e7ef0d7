package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * An old rafter by the rule: names say little of old lumber.
 *
 * @param thickness as measured
 * @param depth as measured
 */
public record MeasuredRafter(
    @Column(
            value = "thickness_in",
            preset = "1.5",
            least = 0.5,
            most = 6,
            rule = "1-1/2 if dressed; old stock is thicker: measure it",
            symbol = "b")
        Figure<Length> thickness,
    @Column(
            value = "depth_in",
            least = 2,
            most = 16,
            rule = "3-1/2 is a dressed 2x4, 5-1/2 a 2x6: measure it",
            symbol = "d")
        Figure<Length> depth) {

  private static final Columns COLUMNS = Columns.of(MeasuredRafter.class);

  public MeasuredRafter {
    thickness = COLUMNS.let("thickness", thickness);
    depth = COLUMNS.let("depth", depth);
  }

  /** A rafter of this depth, as thick as dressed lumber unless it is said. */
  public static MeasuredRafter depth(Figure<Length> measured) {
    return new MeasuredRafter(null, measured);
  }

  public MeasuredRafter thickness(Figure<Length> measured) {
    return new MeasuredRafter(measured, depth);
  }

  /** What it shows where it is cut through. */
  public PlySection section() {
    Columns named = COLUMNS.of(PlySection.RAFTER);
    return new PlySection(
        PlySection.RAFTER, named.let("thickness", thickness), named.let("depth", depth));
  }
}
