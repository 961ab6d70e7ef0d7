package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;
import sheathwright.wood.LumberSize;

/**
 * A sister at its support.
 *
 * @param size nominal, taken at its dry dressed size
 * @param end its seat cut, and the shear and bearing that its wood is allowed there
 */
public record SeatedSister(@Column("size") OneOf<LumberSize> size, PlyEnd end) {

  private static final Columns COLUMNS = Columns.of(SeatedSister.class);

  public SeatedSister {
    end = Objects.requireNonNullElseGet(end, () -> new PlyEnd(null, null, null));
    size = COLUMNS.let("size", size);
  }

  /** A sister of this size without a notch; its values are still to be said. */
  public static SeatedSister size(OneOf<LumberSize> nominal) {
    return new SeatedSister(nominal, null);
  }

  public SeatedSister notch(Figure<Length> deep) {
    return new SeatedSister(size, end.notch(deep));
  }

  public SeatedSister shear(Figure<Stress> adjusted) {
    return new SeatedSister(size, end.shear(adjusted));
  }

  public SeatedSister bearing(Figure<Stress> adjusted) {
    return new SeatedSister(size, end.bearing(adjusted));
  }

  /** What it shows where it is cut through. */
  PlySection section() {
    return PlySection.dressed(PlySection.SISTER, COLUMNS.of(PlySection.SISTER).let("size", size));
  }
}
