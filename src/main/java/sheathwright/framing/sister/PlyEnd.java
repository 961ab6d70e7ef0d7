package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;

/**
 * The end of a piece on its support.
 *
 * @param notch seat-cut depth
 * @param shear F_v', adjusted
 * @param bearing F_c⊥', adjusted
 */
public record PlyEnd(
    @Column(
            value = "notch_in",
            preset = "0",
            least = 0,
            most = 4,
            rule = "the birdsmouth's depth; 0 if there is none",
            symbol = "notch")
        Figure<Length> notch,
    @Column(
            value = "shear_psi",
            least = 10,
            most = 1000,
            rule = "F_v' with every adjustment factor applied",
            symbol = "F_v'")
        Figure<Stress> shear,
    @Column(
            value = "bearing_psi",
            least = 50,
            most = 3000,
            rule = "F_c⊥' with every adjustment factor applied",
            symbol = "F_c⊥'")
        Figure<Stress> bearing) {

  private static final Columns COLUMNS = Columns.of(PlyEnd.class);

  public PlyEnd {
    notch = COLUMNS.let("notch", notch);
    shear = COLUMNS.let("shear", shear);
    bearing = COLUMNS.let("bearing", bearing);
  }

  public PlyEnd notch(Figure<Length> deep) {
    return new PlyEnd(deep, shear, bearing);
  }

  public PlyEnd shear(Figure<Stress> adjusted) {
    return new PlyEnd(notch, adjusted, bearing);
  }

  public PlyEnd bearing(Figure<Stress> adjusted) {
    return new PlyEnd(notch, shear, adjusted);
  }

  /** The same end, its numbers named by whose it is. */
  PlyEnd of(String whose) {
    Columns named = COLUMNS.of(whose);
    return new PlyEnd(
        named.let("notch", notch), named.let("shear", shear), named.let("bearing", bearing));
  }
}
