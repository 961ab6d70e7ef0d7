package sheathwright.life.back;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.RowSource;
import sheathwright.life.record.HeldTables;
import sheathwright.life.record.TableChanges;

/** The cells of a table read as the job reads them: 3/8 and 0.375 say the same. */
record SameCells(JobTable table) {

  /** What a cell of a row may hold; nothing where it is a note. */
  Field<?> field(Map<String, String> row, String column) {
    return table
        .keys()
        .<Field<?>>map(
            keys ->
                column.equals(keys.value())
                    ? TableGuide.fields(table).get(row.getOrDefault(keys.key(), ""))
                    : null)
        .orElseGet(() -> TableGuide.fields(table).get(column));
  }

  /** Whether two cells of a column say the same. */
  boolean isSame(Map<String, String> row, String column, String one, String other) {
    return TableChanges.isSame(one, other)
        || TableChanges.isSame(plain(row, column, one), plain(row, column, other));
  }

  /** A cell as the job reads it; as it stands where it cannot be read. */
  String plain(Map<String, String> row, String column, String text) {
    Field<?> field = field(row, column);
    if (field == null || text.isEmpty()) {
      return text;
    }
    try {
      return HeldTables.plain(field.read(column, text, Source.GIVEN));
    } catch (RefusedException unreadable) {
      return text;
    }
  }

  /**
   * A cell as it is to be written: a word or a day as the job reads it, a number as it was typed,
   * and so a day that could be its month, which is asked about whenever the job is read.
   *
   * @throws RefusedException if the column does not take it
   */
  String written(Map<String, String> row, String column, String text) {
    Field<?> field = field(row, column);
    if (field == null || text.isEmpty()) {
      return text;
    }
    Traced read = field.read(column, text, Source.GIVEN);
    boolean isAskedAbout = Moment.doubt(text).isPresent();
    return read instanceof Figure<?> || isAskedAbout ? text : ((Choice<?>) read).plain();
  }

  /** The lines of a table, each by column, its numbers with a decimal point. */
  List<Map<String, String>> rows(RowSource file) {
    return file.lines().stream().map(line -> row(file, line)).toList();
  }

  /** One of them. */
  Map<String, String> row(RowSource file, RowSource.Line line) {
    Map<String, String> row = new LinkedHashMap<>(CrewTabs.row(file, line));
    row.replaceAll(
        (column, text) -> {
          Field<?> field = field(row, column);
          try {
            return field == null || field.unit() == null ? text : file.readable(text);
          } catch (RefusedException unclear) {
            return text;
          }
        });
    return row;
  }
}
