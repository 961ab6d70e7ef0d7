package sheathwright.cutting.sheet;

/**
 * A rectangle of a sheet: a part between two cuts, or a rest.
 *
 * @param x from the sheet's left edge, in units
 * @param y from the sheet's lower edge, in units
 * @param width along the strength axis, in units, 0 for no rest at all
 * @param height across the strength axis, in units, 0 for no rest at all
 */
public record SheetPart(long x, long y, long width, long height) {

  /** No rest. */
  public static final SheetPart NONE = new SheetPart(0, 0, 0, 0);

  /** Width times height. */
  public long area() {
    return width * height;
  }
}
