package sheathwright.job.season;

import java.util.ArrayList;
import java.util.List;
import sheathwright.job.table.RowSource;

/**
 * The lines of a season's table that belong to one job, without the column that says so.
 *
 * @param file the table of all jobs
 * @param header its other headings
 * @param lines those of the job, where they stand in it
 */
record JobRows(RowSource file, List<String> header, List<Line> lines) implements RowSource {

  /**
   * These lines of a table.
   *
   * @param column in which each says whose it is; less than 0 where the table has none
   */
  static JobRows of(RowSource file, int column, List<Line> own) {
    return new JobRows(
        file,
        without(file.header(), column),
        own.stream().map(line -> new Line(line.number(), without(line.cells(), column))).toList());
  }

  private static List<String> without(List<String> cells, int column) {
    List<String> others = new ArrayList<>(cells);
    if (column >= 0) {
      others.remove(column);
    }
    return List.copyOf(others);
  }

  @Override
  public String name() {
    return file.name();
  }

  @Override
  public boolean isNothing() {
    return lines.isEmpty();
  }

  @Override
  public String readable(String cell) {
    return file.readable(cell);
  }
}
