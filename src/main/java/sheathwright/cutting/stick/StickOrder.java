package sheathwright.cutting.stick;

import java.util.List;

/**
 * What is to be cut, and what it may be cut from. All lengths are whole numbers of one small unit
 * that the caller chooses.
 *
 * @param stock the lengths on sale or on hand, in any order
 * @param pieces the lengths wanted, in any order
 * @param kerf what one cut between two neighboring pieces takes, 0 or more; the last cut, beside
 *     the offcut, costs no room
 * @param trim what is taken off each of the two ends of every stick before it is used, 0 or more
 */
public record StickOrder(List<StockLength> stock, List<StickPiece> pieces, long kerf, long trim) {

  /** The longest length, kerf or trim. */
  public static final long LONGEST = 1_000_000_000_000L;

  /** The highest price of one stick. */
  public static final long DEAREST = 1_000_000_000_000L;

  /** The most pieces of all lengths together. */
  public static final int MOST_PIECES = 100_000;

  public StickOrder {
    stock = List.copyOf(stock);
    pieces = List.copyOf(pieces);
    require("kerf", kerf, 0, LONGEST);
    require("trim", trim, 0, LONGEST);
    require("number of pieces", pieces.stream().mapToLong(StickPiece::count).sum(), 0, MOST_PIECES);
  }

  static void require(String name, long value, long least, long most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " is " + value + "; it must be from " + least + " to " + most);
    }
  }
}
