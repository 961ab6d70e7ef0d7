package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How far the sides of a plane lean in from eave to ridge, measured along the eave: none at a rake,
 * in at a hip, out at a valley.
 *
 * @param left of the left side, negative at a valley
 * @param right of the right side, negative at a valley
 */
public record Leans(
    @Column(value = "left_lean_ft", preset = "0", least = -200, most = 200, rule = RULE)
        Figure<Length> left,
    @Column(value = "right_lean_ft", preset = "0", least = -200, most = 200, rule = RULE)
        Figure<Length> right) {

  private static final String RULE = "0 for a rake, less for a valley";
  private static final Columns COLUMNS = Columns.of(Leans.class);

  public Leans {
    left = COLUMNS.let("left", left);
    right = COLUMNS.let("right", right);
  }

  /** The left side leans so far; the right one is a rake unless it is said. */
  public static Leans left(Figure<Length> in) {
    return new Leans(in, null);
  }

  public Leans right(Figure<Length> in) {
    return new Leans(left, in);
  }
}
