package sheathwright.cutting.stick;

/**
 * A length that sticks are sold in.
 *
 * @param length of the whole stick in the order's unit, 1 to {@link StickOrder#LONGEST}
 * @param price of one stick in the caller's smallest money unit, 0 to {@link StickOrder#DEAREST}
 * @param available how many can be had, 0 or more; {@link #ANY} means any number
 */
public record StockLength(long length, long price, int available) {

  /** As many sticks as anybody wants. */
  public static final int ANY = Integer.MAX_VALUE;

  public StockLength {
    StickOrder.require("stock length", length, 1, StickOrder.LONGEST);
    StickOrder.require("stock price", price, 0, StickOrder.DEAREST);
    StickOrder.require("stock available", available, 0, ANY);
  }
}
