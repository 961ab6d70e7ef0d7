package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.LumberSize;

/**
 * Two sticks that lie against each other.
 *
 * @param sister nominal size of the sister
 * @param rafter nominal size of the old rafter
 */
public record SideBySide(
    @Column(value = "sister_size", preset = "2x6") OneOf<LumberSize> sister,
    @Column(value = "rafter_size", preset = "2x6") OneOf<LumberSize> rafter) {

  private static final Columns COLUMNS = Columns.of(SideBySide.class);

  public SideBySide {
    sister = COLUMNS.let("sister", sister);
    rafter = COLUMNS.let("rafter", rafter);
  }

  /** A sister of this size against a 2x6 unless the rafter's size is said. */
  public static SideBySide sister(OneOf<LumberSize> size) {
    return new SideBySide(size, null);
  }

  public SideBySide rafter(OneOf<LumberSize> size) {
    return new SideBySide(sister, size);
  }

  /**
   * How deep both stand.
   *
   * @param sister dressed depth of its nominal size
   * @param rafter dressed depth of its nominal size
   */
  record Depths(Figure<Length> sister, Figure<Length> rafter) {}

  Depths depths() {
    return new Depths(
        DressedSizes.width(sister).as("sister_depth_in", Units.INCH),
        DressedSizes.width(rafter).as("rafter_depth_in", Units.INCH));
  }
}
