package sheathwright.job.table;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * One thing wrong with a user's file, or to be asked about it.
 *
 * @param file its name
 * @param line counted from 1, the heading included; 0 if the whole file is meant
 * @param column as headed; empty if the whole line is meant
 * @param message what was given and what is allowed
 * @param cell its address, where it stands in a workbook; else empty
 */
public record Problem(String file, long line, String column, String message, String cell) {

  /** One in a file that is no workbook. */
  public Problem(String file, long line, String column, String message) {
    this(file, line, column, message, "");
  }

  /** Problems table by table and line by line. */
  public static List<Problem> inOrder(Collection<Problem> problems) {
    return problems.stream()
        .sorted(Comparator.comparing(Problem::file).thenComparingLong(Problem::line))
        .toList();
  }

  @Override
  public String toString() {
    return Printable.line(
        file
            + (!cell.isEmpty() ? ", cell " + cell : line == 0 ? "" : ", line " + line)
            + (column.isEmpty() ? "" : ", column " + column)
            + ": "
            + message);
  }
}
