package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Stress;

/**
 * How hard a piece's wood is to stretch and bend.
 *
 * @param modulus E
 */
public record Elasticity(
    @Column(
            value = "modulus_psi",
            preset = "1400000",
            least = 100_000,
            most = 5_000_000,
            rule = "1400000 is spruce-pine-fir no. 2",
            symbol = "E")
        Figure<Stress> modulus) {

  private static final Columns COLUMNS = Columns.of(Elasticity.class);

  public Elasticity {
    modulus = COLUMNS.let("modulus", modulus);
  }

  public static Elasticity of(Figure<Stress> modulus) {
    return new Elasticity(modulus);
  }

  /** The modulus under its owner's name. */
  Figure<Stress> of(String whose) {
    return COLUMNS.of(whose).let("modulus", modulus);
  }
}
