package sheathwright.workbook.audit;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;

/**
 * A cell, or the cells down to and across to another, as a name points at them.
 *
 * @param row counted from 0, as all of them
 */
record Spot(String sheet, int row, int column, int lastRow, int lastColumn) {

  private static final Pattern REFERENCE =
      Pattern.compile(
          "=?(?:'((?:[^']|'')+)'|([^'!]+))!\\$?([A-Za-z]{1,3})\\$?(\\d{1,7})(?::\\$?([A-Za-z]{1,3})\\$?(\\d{1,7}))?");

  /** Where a name's formula points; nothing where it points at anything else. */
  static Optional<Spot> of(String formula) {
    Matcher matcher = REFERENCE.matcher(formula.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String sheet =
        matcher.group(1) != null ? matcher.group(1).replace("''", "'") : matcher.group(2);
    int column = CellReference.convertColStringToIndex(matcher.group(3));
    int row = Integer.parseInt(matcher.group(4)) - 1;
    boolean isRange = matcher.group(5) != null;
    return Optional.of(
        new Spot(
            sheet.startsWith("$") ? sheet.substring(1) : sheet,
            row,
            column,
            isRange ? Integer.parseInt(matcher.group(6)) - 1 : row,
            isRange ? CellReference.convertColStringToIndex(matcher.group(5)) : column));
  }

  static String address(int row, int column) {
    return CellReference.convertNumToColString(column) + (row + 1);
  }

  /** As it is said of a cell or a block of cells. */
  String address() {
    String first = address(row, column);
    return row == lastRow && column == lastColumn
        ? first
        : first + ":" + address(lastRow, lastColumn);
  }

  boolean covers(int line, int across) {
    return row <= line && line <= lastRow && column <= across && across <= lastColumn;
  }

  Spot moved(int rows, int columns) {
    return new Spot(sheet, row + rows, column + columns, lastRow + rows, lastColumn + columns);
  }
}
