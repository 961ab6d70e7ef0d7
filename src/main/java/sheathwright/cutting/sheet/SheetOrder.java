package sheathwright.cutting.sheet;

import java.util.List;

/**
 * What is to be cut out of what. All lengths are whole numbers of one small unit that the caller
 * chooses; dividing them by a common divisor first makes the search faster.
 *
 * @param sheetWidth of a new sheet along its strength axis, 1 to 1 000 000 000 units
 * @param sheetHeight of a new sheet across its strength axis, 1 to 1 000 000 000 units
 * @param offcuts on hand, none or more
 * @param pieces wanted, none or more, up to 10 000 copies in all; plans are good up to some
 *     hundreds
 * @param kerf width of the saw cut between neighboring pieces, 0 to 1 000 000 000 units
 */
public record SheetOrder(
    long sheetWidth, long sheetHeight, List<Offcut> offcuts, List<SheetPiece> pieces, long kerf) {

  /** The longest side or kerf: an area stays below 2^60. */
  static final long LONGEST = 1_000_000_000;

  /** The most pieces. */
  private static final int MOST = 10_000;

  /**
   * @throws IllegalArgumentException if a size is out of range or more than 10 000 pieces are
   *     wanted
   */
  public SheetOrder {
    checkSize("sheet", sheetWidth, sheetHeight);
    if (kerf < 0 || kerf > LONGEST) {
      throw new IllegalArgumentException("kerf out of range: " + kerf);
    }
    offcuts = List.copyOf(offcuts);
    pieces = List.copyOf(pieces);
    if (pieces.stream().mapToLong(SheetPiece::count).sum() > MOST) {
      throw new IllegalArgumentException("more than " + MOST + " pieces");
    }
  }

  static void checkSize(String what, long width, long height) {
    if (width < 1 || height < 1 || width > LONGEST || height > LONGEST) {
      throw new IllegalArgumentException(
          what + " out of range: " + width + " by " + height + " units");
    }
  }

  static void checkCount(String what, int count) {
    if (count < 1) {
      throw new IllegalArgumentException(what + " count must be 1 or more: " + count);
    }
  }
}
