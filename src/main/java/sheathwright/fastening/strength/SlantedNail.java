package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A nail that is driven aslant through one member into another.
 *
 * @param length of the nail
 * @param sideThickness of the member it is driven through
 */
public record SlantedNail(
    @Column(value = "length_in", least = 1, most = 8, rule = "an 8d common has 2-1/2", symbol = "L")
        Figure<Length> length,
    @Column(
            value = "side_thickness_in",
            preset = "1.5",
            least = 0.5,
            most = 4,
            rule = "1-1/2 for a 2x")
        Figure<Length> sideThickness) {

  private static final Columns COLUMNS = Columns.of(SlantedNail.class);

  public SlantedNail {
    length = COLUMNS.let("length", length);
    sideThickness = COLUMNS.let("sideThickness", sideThickness);
  }

  /** A nail of this length through a 2x. */
  public static SlantedNail length(Figure<Length> overall) {
    return new SlantedNail(overall, null);
  }

  public SlantedNail sideThickness(Figure<Length> through) {
    return new SlantedNail(length, through);
  }
}
