package sheathwright.wood;

import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/**
 * The dry dressed sizes that a lumber yard sells under a nominal size. Old and green lumber is
 * larger: measure it.
 */
public final class DressedSizes {

  private static final Table TABLE =
      Published.table("ps20/2020/dressed-sizes.csv", "dressed_size", "dressed sizes", 1);

  private DressedSizes() {}

  /** The narrow face, across the load. */
  public static Figure<Length> thickness(OneOf<LumberSize> size) {
    return TABLE.number(Units.INCH, "thickness_in", size);
  }

  /** The wide face, which stands on edge in a rafter. */
  public static Figure<Length> width(OneOf<LumberSize> size) {
    return TABLE.number(Units.INCH, "width_in", size);
  }
}
