package sheathwright.workbook.part;

/**
 * Between which cells of a sheet a drawing stands.
 *
 * @param from its upper left corner
 * @param to its lower right corner
 */
public record Anchor(Corner from, Corner to) {

  /** Units of a drawing in a dot of a screen, of which an inch has 96 (ECMA-376, 20.1.10.16). */
  public static final int UNITS_A_DOT = 9_525;

  /** Units of a drawing in a point, of which an inch has 72. */
  public static final int UNITS_A_POINT = 12_700;

  /**
   * A place in a cell.
   *
   * @param column counted from 0
   * @param row counted from 0
   * @param right of the cell's left side, in units of a drawing
   * @param down from the cell's upper side
   */
  public record Corner(int column, int row, int right, int down) {

    private void writeTo(XmlText xml, String tag) {
      xml.open(tag).leaf("xdr:col", column).leaf("xdr:colOff", right);
      xml.leaf("xdr:row", row).leaf("xdr:rowOff", down).close(tag);
    }
  }

  /** Whole cells, from the first column on. */
  public static Anchor ofCells(int top, int columns, int lines) {
    return new Anchor(new Corner(0, top, 0, 0), new Corner(columns, top + lines, 0, 0));
  }

  void writeTo(XmlText xml) {
    from.writeTo(xml, "xdr:from");
    to.writeTo(xml, "xdr:to");
  }
}
