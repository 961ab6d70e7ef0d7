package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Quantity.Stress;
import sheathwright.wood.LumberSize;

/**
 * A dressed piece that bends beside another.
 *
 * @param size nominal, taken at its dry dressed size
 * @param elasticity of its wood
 */
public record Ply(@Column("size") OneOf<LumberSize> size, Elasticity elasticity) {

  private static final Columns COLUMNS = Columns.of(Ply.class);

  public Ply {
    elasticity = Objects.requireNonNullElseGet(elasticity, () -> new Elasticity(null));
    size = COLUMNS.let("size", size);
  }

  /** A piece of this size, of a common wood unless its modulus is said. */
  public static Ply size(OneOf<LumberSize> nominal) {
    return new Ply(nominal, null);
  }

  public Ply modulus(Figure<Stress> modulus) {
    return new Ply(size, Elasticity.of(modulus));
  }

  /** What it shows where it is cut through. */
  PlySection section(String whose) {
    return PlySection.dressed(whose, COLUMNS.of(whose).let("size", size));
  }

  /** How stiff it is, named by whose it is. */
  public Figure<Stiffness> stiffness(String whose) {
    return section(whose).stiffness(elasticity);
  }
}
