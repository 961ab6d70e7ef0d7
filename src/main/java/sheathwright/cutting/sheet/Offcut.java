package sheathwright.cutting.sheet;

/**
 * A rectangle on hand. It costs nothing and is used before a new sheet is bought.
 *
 * @param width along the strength axis, 1 to 1 000 000 000 units
 * @param height across the strength axis, 1 to 1 000 000 000 units
 * @param count how many are on hand, 1 or more
 */
public record Offcut(long width, long height, int count) {

  /**
   * @throws IllegalArgumentException if a size or the count is out of range
   */
  public Offcut {
    SheetOrder.checkSize("offcut", width, height);
    SheetOrder.checkCount("offcut", count);
  }
}
