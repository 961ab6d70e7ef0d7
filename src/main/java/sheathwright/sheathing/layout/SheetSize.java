package sheathwright.sheathing.layout;

/**
 * A sheet, or an offcut on hand.
 *
 * @param width inches along the strength axis
 * @param height inches across it
 */
public record SheetSize(double width, double height) {

  /** A 4 by 8 sheet. */
  public static final SheetSize FOUR_BY_EIGHT = new SheetSize(96, 48);
}
