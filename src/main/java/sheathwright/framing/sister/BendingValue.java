package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Stress;

/**
 * The stress that a piece's wood may be asked in bending.
 *
 * @param bending F_b', adjusted
 */
public record BendingValue(
    @Column(
            value = "bending_psi",
            least = 50,
            most = 10_000,
            rule = "with every adjustment factor applied",
            symbol = "F_b'")
        Figure<Stress> bending) {

  private static final Columns COLUMNS = Columns.of(BendingValue.class);

  public BendingValue {
    bending = COLUMNS.let("bending", bending);
  }

  public static BendingValue of(Figure<Stress> adjusted) {
    return new BendingValue(adjusted);
  }

  /** The value under its owner's name. */
  Figure<Stress> of(String whose) {
    return COLUMNS.of(whose).let("bending", bending);
  }
}
