package sheathwright.cutting.sheet;

/**
 * A piece that is wanted out of sheets, as many times as {@code count} says. It is never given a
 * quarter turn.
 *
 * @param width along the sheet's strength axis, 1 to 1 000 000 000 units
 * @param height across the strength axis, 1 to 1 000 000 000 units
 * @param count how many are wanted, 1 or more
 */
public record SheetPiece(long width, long height, int count) {

  /**
   * @throws IllegalArgumentException if a size or the count is out of range
   */
  public SheetPiece {
    SheetOrder.checkSize("piece", width, height);
    SheetOrder.checkCount("piece", count);
  }
}
