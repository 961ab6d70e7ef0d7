package sheathwright.job.solve;

import java.util.List;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Row;

/**
 * The column of a table that tells its lines apart: {@code by=week}.
 *
 * @param index of the column
 */
record ClassColumn(int index) {

  /**
   * A column by its heading.
   *
   * @throws RefusedException if the table has none of that name
   */
  static ClassColumn of(CsvFile file, String column) {
    if (!file.header().contains(column)) {
      throw new RefusedException(
          "by=%s: %s has no such column; it has %s"
              .formatted(column, file.name(), String.join(", ", file.header())));
    }
    return new ClassColumn(file.header().indexOf(column));
  }

  /** What stands there in a line; empty where nothing does. */
  String in(Row row) {
    List<String> cells = row.line().cells();
    return index < cells.size() ? cells.get(index).strip() : "";
  }
}
