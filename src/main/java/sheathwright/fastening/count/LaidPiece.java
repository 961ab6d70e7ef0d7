package sheathwright.fastening.count;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A piece of a panel as it lies over supports.
 *
 * @param firstSupport from the piece's left end to the first support's center; not more than their
 *     spacing
 * @param length of the piece across the supports
 * @param width of the piece along the supports
 */
public record LaidPiece(
    @Column(
            value = "first_support_in",
            preset = "0",
            least = 0,
            most = 96,
            rule = "0 if the end lies on one")
        Figure<Length> firstSupport,
    @Column(value = "piece_length_in", least = 4, most = 192, rule = "across the supports")
        Figure<Length> length,
    @Column(value = "piece_width_in", least = 4, most = 96, rule = "along the supports")
        Figure<Length> width) {

  private static final Columns COLUMNS = Columns.of(LaidPiece.class);

  public LaidPiece {
    firstSupport = COLUMNS.let("firstSupport", firstSupport);
    length = COLUMNS.let("length", length);
    width = COLUMNS.let("width", width);
  }

  /** A piece of this length that begins on a support; its width is still to be said. */
  public static LaidPiece length(Figure<Length> across) {
    return new LaidPiece(null, across, null);
  }

  public LaidPiece width(Figure<Length> along) {
    return new LaidPiece(firstSupport, length, along);
  }

  public LaidPiece firstSupport(Figure<Length> fromTheLeft) {
    return new LaidPiece(fromTheLeft, length, width);
  }
}
