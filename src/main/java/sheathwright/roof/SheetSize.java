package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How large a sheet of the deck is.
 *
 * @param length along the eave, across the supports
 * @param width up the slope, along the supports
 */
public record SheetSize(
    @Column(
            value = "sheet_length_in",
            preset = "96",
            least = 1,
            most = 192,
            rule = "a whole sheet has 96")
        Figure<Length> length,
    @Column(
            value = "sheet_width_in",
            preset = "48",
            least = 1,
            most = 96,
            rule = "a whole sheet has 48")
        Figure<Length> width) {

  private static final Columns COLUMNS = Columns.of(SheetSize.class);

  /** The usual sheet, 4 ft by 8 ft. */
  public static final SheetSize FOUR_BY_EIGHT =
      new SheetSize(whole("sheet_length_in", 96), whole("sheet_width_in", 48));

  public SheetSize {
    length = COLUMNS.let("length", length);
    width = COLUMNS.let("width", width);
  }

  /** A sheet of this length and the usual width. */
  public static SheetSize length(Figure<Length> along) {
    return new SheetSize(along, null);
  }

  public SheetSize width(Figure<Length> up) {
    return new SheetSize(length, up);
  }

  private static Figure<Length> whole(String name, double inches) {
    return Figure.constant(name, inches, Units.INCH, Source.derived("4 ft by 8 ft"));
  }
}
