package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Stress;

/**
 * What a stick may bear in bending if nothing lets it roll, and how stiff it is against rolling.
 *
 * @param bending F_b* with every factor but stability and flat use
 * @param minModulus E_min' with its factors
 */
public record BendingValues(
    @Column(
            value = "bending_psi",
            least = 1,
            most = 10_000,
            rule = "with every factor but stability and flat use",
            symbol = "F_b*")
        Figure<Stress> bending,
    @Column(
            value = "min_modulus_psi",
            least = 1000,
            most = 2_000_000,
            rule = "design_values gives it",
            symbol = "E_min'")
        Figure<Stress> minModulus) {

  private static final Columns COLUMNS = Columns.of(BendingValues.class);

  public BendingValues {
    bending = COLUMNS.let("bending", bending);
    minModulus = COLUMNS.let("minModulus", minModulus);
  }

  /** A bending value; the least modulus is still to be said. */
  public static BendingValues bending(Figure<Stress> value) {
    return new BendingValues(value, null);
  }

  public BendingValues minModulus(Figure<Stress> value) {
    return new BendingValues(bending, value);
  }
}
