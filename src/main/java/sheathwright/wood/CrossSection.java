package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * What a stick measures where it is cut through, taken from a rule.
 *
 * @param thickness measured across the load
 * @param depth measured along the load
 */
public record CrossSection(
    @Column(
            value = "thickness_in",
            least = 0.5,
            most = 24,
            rule = "a dressed 2x has 1-1/2",
            symbol = "b")
        Figure<Length> thickness,
    @Column(
            value = "depth_in",
            least = 1,
            most = 60,
            rule = "a dressed 2x8 has 7-1/4",
            symbol = "d")
        Figure<Length> depth) {

  private static final Columns COLUMNS = Columns.of(CrossSection.class);

  public CrossSection {
    thickness = COLUMNS.let("thickness", thickness);
    depth = COLUMNS.let("depth", depth);
  }

  /** So thick; how deep is still to be said. */
  public static CrossSection thickness(Figure<Length> across) {
    return new CrossSection(across, null);
  }

  public CrossSection depth(Figure<Length> along) {
    return new CrossSection(thickness, along);
  }
}
