package sheathwright.life.back;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.RefusedException;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.RowSource;

/**
 * One survey on its way into a job's tables: what the tables do not say yet is filled in, what they
 * say otherwise is a dispute. The survey began empty, so a blank cell of it says nothing.
 */
final class SurveyReading {

  private final TakenTables tables;
  private final TableBook book;

  SurveyReading(TakenTables tables, TableBook book) {
    this.tables = tables;
    this.book = book;
  }

  /** Whether a workbook is a survey. */
  static boolean isOf(TableBook book) {
    return book.tabs().contains(SurveyTabs.CALL);
  }

  /** Takes all of it. */
  void take() {
    List<JobTable> all = new ArrayList<>(List.of(JobTable.JOB, JobTable.FIRST_CALL));
    all.addAll(SurveyTabs.ON_THE_ROOF);
    for (JobTable table : all) {
      Collection<String> known =
          table
              .keys()
              .<Collection<String>>map(keys -> List.of(keys.key(), keys.value()))
              .orElseGet(() -> TableGuide.fields(table).keySet());
      book.table(table.word(), known).ifPresent(rows -> take(table, rows));
    }
  }

  private void take(JobTable table, SheetTable rows) {
    List<String> filled =
        rows.header().stream()
            .filter(column -> isTaken(table, column))
            .filter(column -> isFilled(rows, column))
            .toList();
    List<String> keys = keys(table, rows, filled);
    SameCells same = new SameCells(table);
    for (RowSource.Line line : rows.lines()) {
      Map<String, String> row = same.row(rows, line);
      row.keySet().retainAll(filled);
      if (SurveyTabs.answer(table).filter(answer -> !row.containsKey(answer)).isPresent()) {
        continue;
      }
      readable(same, rows, line, row);
      if (keys.isEmpty()) {
        tables.added(table).add(row);
        continue;
      }
      for (String key : keys) {
        if (!row.containsKey(key)) {
          tables.problem(
              rows, line, key, "it is empty, and tells this line from others; fill it in");
        }
      }
      Map<String, String> found = new LinkedHashMap<>(row);
      found.keySet().removeAll(keys);
      tables.take(table, keys, row, Map.of(), found, Map.of(), rows, line);
    }
  }

  /**
   * What tells one line from others, be it filled in or not; of what only some tables have, that.
   */
  private static List<String> keys(JobTable table, SheetTable rows, List<String> filled) {
    List<String> keys = new ArrayList<>(SurveyTabs.keys(table, rows.header()));
    keys.removeIf(column -> keys.indexOf(column) > 0 && !filled.contains(column));
    return keys;
  }

  /** What stands beside a key in the survey is ours; beside a row it is the estimator's. */
  private static boolean isTaken(JobTable table, String column) {
    return table
        .keys()
        .map(keys -> column.equals(keys.key()) || column.equals(keys.value()))
        .orElse(SurveyTabs.isColumn(TableGuide.fields(table), column));
  }

  private static boolean isFilled(SheetTable rows, String column) {
    int place = rows.header().indexOf(column);
    return rows.lines().stream().anyMatch(line -> !line.cells().get(place).isBlank());
  }

  private void readable(
      SameCells same, SheetTable rows, RowSource.Line line, Map<String, String> row) {
    Map<String, String> asTyped = Map.copyOf(row);
    row.replaceAll(
        (column, text) -> {
          try {
            return same.written(asTyped, column, text);
          } catch (RefusedException refused) {
            tables.problem(rows, line, column, refused.getMessage());
            return text;
          }
        });
  }
}
