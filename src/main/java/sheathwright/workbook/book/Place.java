package sheathwright.workbook.book;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;

/**
 * Where something stands.
 *
 * @param tab the tab
 * @param row counted from 0
 * @param column counted from 0
 * @param name its defined name; empty if it has none
 */
record Place(String tab, int row, int column, String name) {

  /** As a formula of a tab refers to it. */
  String referenceFrom(String ownTab) {
    if (!name.isEmpty()) {
      return name;
    }
    return tab.equals(ownTab)
        ? new CellReference(row, column, true, true).formatAsString()
        : absolute();
  }

  /** The same place, not called by its name. */
  Place nameless() {
    return new Place(tab, row, column, "");
  }

  /** The cells from here down to a line. */
  String downTo(int last) {
    return new CellRangeAddress(row, last, column, column).formatAsString();
  }

  /** As its name is defined. */
  String absolute() {
    return new CellReference(tab, row, column, true, true).formatAsString();
  }

  /** A tab's name as formulas have it: an apostrophe in it stands twice. */
  static String quoted(String tab) {
    return "'" + tab.replace("'", "''") + "'";
  }

  /** As somebody tells another where to look. */
  String address() {
    return tab + "!" + new CellReference(row, column).formatAsString();
  }
}
