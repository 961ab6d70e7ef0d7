package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;
import sheathwright.wood.Nds;

/**
 * A nail that carries across its length.
 *
 * @param diameter D of the shank
 * @param length of the nail
 * @param bendingYield F_yb of the nail
 */
public record ShearNail(
    @Column(
            value = "diameter_in",
            least = Nds.LEAST_NAIL_IN,
            most = Nds.MOST_NAIL_IN,
            rule = Nds.NAIL_RULE,
            symbol = "D")
        Figure<Length> diameter,
    @Column(
            value = "length_in",
            least = 0.5,
            most = 8,
            rule = "an 8d common has 2-1/2",
            symbol = "L")
        Figure<Length> length,
    @Column(
            value = "bending_yield_psi",
            least = 30_000,
            most = 250_000,
            rule = "100000 to 0.142 in, 90000 to 0.177 in",
            symbol = "F_yb")
        Figure<Stress> bendingYield) {

  private static final Columns COLUMNS = Columns.of(ShearNail.class);

  public ShearNail {
    diameter = COLUMNS.let("diameter", diameter);
    length = COLUMNS.let("length", length);
    bendingYield = COLUMNS.let("bendingYield", bendingYield);
  }

  /** A nail of this diameter; its length and its steel are still to be said. */
  public static ShearNail diameter(Figure<Length> across) {
    return new ShearNail(across, null, null);
  }

  public ShearNail length(Figure<Length> overall) {
    return new ShearNail(diameter, overall, bendingYield);
  }

  public ShearNail bendingYield(Figure<Stress> strength) {
    return new ShearNail(diameter, length, strength);
  }
}
