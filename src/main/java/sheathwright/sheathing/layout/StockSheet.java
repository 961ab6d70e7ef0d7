package sheathwright.sheathing.layout;

/**
 * A sheet, or an offcut on hand.
 *
 * @param width inches along the strength axis
 * @param height inches across it
 */
public record StockSheet(double width, double height) {

  /** A 4 by 8 sheet. */
  public static final StockSheet FOUR_BY_EIGHT = new StockSheet(96, 48);
}
