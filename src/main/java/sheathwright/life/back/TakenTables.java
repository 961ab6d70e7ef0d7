package sheathwright.life.back;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.life.record.TableText;

/** A job's tables with everything that workbooks say of them, and what is wrong with that. */
final class TakenTables {

  private static final char COMMA = ',';

  private final Path folder;
  private final Map<JobTable, TakenRows> rows = new EnumMap<>(JobTable.class);
  private final Map<JobTable, AddedRows> added = new EnumMap<>(JobTable.class);
  private final List<Problem> problems = new ArrayList<>();

  TakenTables(Path folder) {
    this.folder = folder;
  }

  /** The rows of a table whose rows can be told apart, as they stand and are changed. */
  TakenRows rows(JobTable table, List<String> keys) {
    return rows.computeIfAbsent(
        table,
        any ->
            new TakenRows(
                table,
                keys,
                isThere(table)
                    ? new SameCells(table).rows(text(table, Set.of()).parsed())
                    : List.of()));
  }

  /** The rows that are added to a table. */
  AddedRows added(JobTable table) {
    return added.computeIfAbsent(table, AddedRows::new);
  }

  /** Says what is wrong with a cell of a workbook. */
  void problem(SheetTable source, RowSource.Line line, String column, String message) {
    problems.add(source.problem(line.number(), column, message));
  }

  /** Says what is wrong. */
  void problem(Problem problem) {
    problems.add(problem);
  }

  /** Takes what a workbook says of a row of a table. */
  void take(
      JobTable table,
      List<String> keys,
      Map<String, String> row,
      Map<String, String> was,
      Map<String, String> found,
      Map<String, String> signed,
      SheetTable source,
      RowSource.Line line) {
    rows(table, keys).take(row, was, found, signed, source, line, problems);
  }

  /**
   * The tables that are written.
   *
   * @param said takes a line for each row that is new or changed
   * @throws ProblemsException with everything that is wrong with the workbooks, and each cell that
   *     two changed differently
   */
  List<TableText> written(List<String> said) {
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    List<TableText> written = new ArrayList<>();
    for (JobTable table : JobTable.values()) {
      if (rows.containsKey(table)) {
        TakenRows taken = rows.get(table);
        taken.onto(text(table, taken.columns()), said).ifPresent(written::add);
      } else if (added.containsKey(table)) {
        AddedRows more = added.get(table);
        more.onto(text(table, more.columns()), said).ifPresent(written::add);
      }
    }
    return written;
  }

  private boolean isThere(JobTable table) {
    return Files.exists(folder.resolve(table.file()));
  }

  /**
   * A table's text; a new one where it is not there.
   *
   * @param used the columns that something is written into
   */
  private TableText text(JobTable table, Set<String> used) {
    List<Field<?>> fields = List.copyOf(TableGuide.fields(table).values());
    return isThere(table)
        ? TableText.of(folder.resolve(table.file()), fields)
        : TableText.empty(
            table.file(),
            fields.stream().filter(field -> used.contains(field.name())).toList(),
            separator());
  }

  /** Between the cells of a new table stands what stands there in the job's facts. */
  private char separator() {
    return isThere(JobTable.JOB) ? text(JobTable.JOB, Set.of()).separator() : COMMA;
  }
}
