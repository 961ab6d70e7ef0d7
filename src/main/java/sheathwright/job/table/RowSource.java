package sheathwright.job.table;

import java.util.List;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.RefusedException;

/**
 * Where the rows of a table come from: a CSV file, a workbook's tab, or whatever else has headings
 * over lines.
 */
public interface RowSource {

  /** One line: its number where it stands, and as many cells as the header, each as written. */
  record Line(long number, List<String> cells) {}

  /** What the table is called in messages. */
  String name();

  /** The headings, stripped. */
  List<String> header();

  /** The lines that hold anything. */
  List<Line> lines();

  /** The line that stands for the table as a whole; 0 where the table stands for itself. */
  default long place() {
    return 0;
  }

  /** The same without the lines in which only notes stand, where those can be told. */
  default RowSource withoutNoteLines() {
    return this;
  }

  /**
   * Whether it is a part of a table, and none of its lines belong here: as if there was no table,
   * unless a heading alone says something.
   */
  default boolean isNothing() {
    return false;
  }

  /** The heading under which a cell of a line stands where it was written: its column's. */
  default String heading(Line line, String column) {
    return column;
  }

  /** The line that its headings stand in, counted from 1. */
  default long headingLine() {
    return 1;
  }

  /** What is wrong with a cell of a line, or with the line where no column is named. */
  default Problem problem(long line, String column, String message) {
    return new Problem(name(), line, column, message);
  }

  /** What is to be asked about how it was found. */
  default List<Problem> questions() {
    return List.of();
  }

  /**
   * A cell of a number or a word as it is to be read, however this source writes its numbers.
   *
   * @throws RefusedException if it is too long, or could be one number or another
   */
  String readable(String cell);

  /**
   * A cell under a column's name, to be read.
   *
   * @throws RefusedException if it is too long, or could be one number or another
   */
  default TypedCell typed(String column, String cell) {
    try {
      return new TypedCell(column, readable(cell));
    } catch (RefusedException unclear) {
      throw new TypedCell(column, cell).refused(unclear.getMessage());
    }
  }
}
