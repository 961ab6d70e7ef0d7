package sheathwright.life.back;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.RefusedException;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.life.View;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.Field;
import sheathwright.job.table.RowSource;
import sheathwright.life.record.Revisions;

/**
 * One crew's workbook on its way into a job's tables: what was found at each place, how far each
 * foot of a rafter lies below the string, what was photographed and what was done.
 */
final class CrewReading {

  /** What may be said once for all rows. */
  private static final List<String> ONCE = List.of(CrewTabs.BY, CrewTabs.ON);

  /** What a finding is nothing without. */
  private static final List<String> NEEDED =
      List.of(CrewTabs.SHEET, CrewTabs.FINDING, CrewTabs.BY, CrewTabs.ON);

  /** Tells one crew's rows from another's. */
  private static final String WRITTEN_BY = "note_by";

  private static final String WRITTEN_ON = "note_on";

  private static final String DONE_ON = LifeFields.WHEN_DONE_ON.name();

  private static final List<String> OF_A_MARK = List.of(CrewTabs.MARK);

  private final TakenTables tables;
  private final TableBook book;
  private final Stage stage;
  private final Map<String, String> start = new LinkedHashMap<>();

  /**
   * A workbook and the tables that it is taken into.
   *
   * @param stage how far the job has come
   */
  CrewReading(TakenTables tables, TableBook book, Stage stage) {
    this.tables = tables;
    this.book = book;
    this.stage = stage;
  }

  /** Whether a workbook is one that a crew fills in. */
  static boolean isOf(TableBook book) {
    return book.tabs().stream().anyMatch(tab -> tab.startsWith(CrewTabs.OF_A_PLANE));
  }

  /** Takes all of it. */
  void take() {
    book.table(CrewTabs.START, List.of("key", "value"))
        .ifPresent(
            table ->
                CrewTabs.rows(table)
                    .forEach(
                        row ->
                            start.put(row.getOrDefault("key", ""), row.getOrDefault("value", ""))));
    Map<String, RowSource> kept = Revisions.kept(book);
    Map<String, Map<String, String>> before = new LinkedHashMap<>();
    if (kept.containsKey(JobTable.MARKS.word())) {
      CrewTabs.rows(kept.get(JobTable.MARKS.word()))
          .forEach(row -> before.put(row.get(CrewTabs.MARK), row));
    }
    Set<String> named = new LinkedHashSet<>(before.keySet());
    book.tabs().stream()
        .filter(tab -> tab.startsWith(CrewTabs.OF_A_PLANE))
        .flatMap(tab -> book.table(tab, CrewTabs.COLUMNS).stream())
        .forEach(rows -> places(rows, before, named));
    book.table(CrewTabs.READINGS, TableGuide.fields(JobTable.READINGS).keySet())
        .ifPresent(table -> readings(table, kept.get(JobTable.READINGS.word())));
    for (JobTable table : CrewTabs.ADDED) {
      book.table(table.word(), TableGuide.fields(table).keySet())
          .ifPresent(rows -> added(table, rows));
    }
  }

  private void places(SheetTable rows, Map<String, Map<String, String>> before, Set<String> named) {
    for (RowSource.Line line : rows.lines()) {
      Map<String, String> row = CrewTabs.row(rows, line);
      Map<String, String> was = before.getOrDefault(row.get(CrewTabs.MARK), Map.of());
      Map<String, String> found = changed(row, was, JobTable.MARKS, CrewTabs.FOUND);
      boolean hasPhoto = row.containsKey(CrewTabs.PHOTO);
      if (found.isEmpty() && !hasPhoto) {
        continue;
      }
      String mark = row.getOrDefault(CrewTabs.MARK, "");
      if (was.isEmpty() && !found.isEmpty()) {
        mark = newName(row.getOrDefault(CrewTabs.SHEET, ""), named);
        complete(rows, line, row, found, mark);
      }
      readable(JobTable.MARKS, rows, line, row, found);
      if (!found.isEmpty()) {
        Map<String, String> place = Map.of(CrewTabs.MARK, mark);
        tables.take(JobTable.MARKS, OF_A_MARK, place, was, found, Map.of(), rows, line);
      }
      if (hasPhoto) {
        photo(row, mark);
      }
    }
  }

  /** What a row says otherwise than it said when the workbook was written. */
  private static Map<String, String> changed(
      Map<String, String> row, Map<String, String> was, JobTable table, List<String> columns) {
    SameCells same = new SameCells(table);
    Map<String, String> changed = new LinkedHashMap<>();
    for (String column : columns) {
      String text = row.getOrDefault(column, "");
      if (!same.isSame(row, column, text, was.getOrDefault(column, ""))) {
        changed.put(column, text);
      }
    }
    return changed;
  }

  /** What was found anew is told with its place, who says so, and when. */
  private void complete(
      SheetTable rows,
      RowSource.Line line,
      Map<String, String> row,
      Map<String, String> found,
      String mark) {
    for (String once : ONCE) {
      found.putIfAbsent(once, start.getOrDefault(once, ""));
    }
    found.put(CrewTabs.PLANE, row.getOrDefault(CrewTabs.PLANE, ""));
    found.put(CrewTabs.SHEET, row.getOrDefault(CrewTabs.SHEET, ""));
    if (!tables.rows(JobTable.MARKS, OF_A_MARK).has(mark)) {
      found.put(MarkFields.STAGE_FOUND.name(), stageFound());
    }
    NEEDED.forEach(column -> require(rows, line, found, column, "this place"));
  }

  /** Says that something is missing of what was found. */
  private void require(
      SheetTable rows, RowSource.Line line, Map<String, String> found, String column, String of) {
    if (found.getOrDefault(column, "").isEmpty()) {
      String message = "it is empty, and something is said of %s; fill it in".formatted(of);
      String orOnce = ", or once for all rows on the tab " + CrewTabs.START;
      tables.problem(rows, line, column, ONCE.contains(column) ? message + orOnce : message);
    }
  }

  private String stageFound() {
    boolean isOpened = stage.isAtLeast(Stage.OPENED);
    return (isOpened ? MarkFields.Seen.OPENED : MarkFields.Seen.SURVEYED).word();
  }

  /** What is found at a place is called after it; what else is found there is counted. */
  private static String newName(String sheet, Set<String> named) {
    String name = sheet.isEmpty() ? "new" : sheet;
    String numbered = name;
    for (int i = 2; !named.add(numbered); i++) {
      numbered = name + "-" + i;
    }
    return numbered;
  }

  /** Each cell is read as the tables will read it. */
  private void readable(
      JobTable table,
      SheetTable rows,
      RowSource.Line line,
      Map<String, String> row,
      Map<String, String> found) {
    SameCells same = new SameCells(table);
    found.replaceAll(
        (column, text) -> {
          try {
            return same.written(row, column, text);
          } catch (RefusedException refused) {
            tables.problem(rows, line, column, refused.getMessage());
            return text;
          }
        });
  }

  /** Who took a reading and when is kept beside it; what stood there before is no dispute. */
  private void readings(SheetTable table, RowSource kept) {
    List<String> keys = SurveyTabs.keys(JobTable.READINGS, table.header());
    SameCells same = new SameCells(JobTable.READINGS);
    Map<String, Map<String, String>> before = new LinkedHashMap<>();
    TakenRows rows = tables.rows(JobTable.READINGS, keys);
    if (kept != null) {
      same.rows(kept).forEach(row -> before.put(rows.name(row), row));
    }
    List<String> columns =
        table.header().stream()
            .filter(column -> !keys.contains(column) && !column.isEmpty())
            .toList();
    for (RowSource.Line line : table.lines()) {
      Map<String, String> row = same.row(table, line);
      Map<String, String> was = before.getOrDefault(rows.name(row), Map.of());
      Map<String, String> found = changed(row, was, JobTable.READINGS, columns);
      if (found.isEmpty()) {
        continue;
      }
      if (found.containsKey(LifeFields.WHEN_DONE.name()) && !row.containsKey(DONE_ON)) {
        found.put(DONE_ON, start.getOrDefault(CrewTabs.ON, ""));
      }
      readable(JobTable.READINGS, table, line, row, found);
      Map<String, String> signed = new LinkedHashMap<>();
      signed.put(WRITTEN_BY, start.getOrDefault(CrewTabs.BY, ""));
      signed.put(WRITTEN_ON, start.getOrDefault(CrewTabs.ON, ""));
      if (signed.containsValue("")) {
        String message =
            "something is said of this rafter, but not by whom and when; write both on the tab ";
        tables.problem(table, line, keys.get(0), message + CrewTabs.START);
      }
      tables.take(JobTable.READINGS, keys, row, was, found, signed, table, line);
    }
  }

  private void photo(Map<String, String> row, String mark) {
    Map<String, String> photo = new LinkedHashMap<>();
    photo.put(OrderFields.PHOTO.name(), row.get(CrewTabs.PHOTO));
    photo.put(OrderFields.OF_MARK.name(), mark);
    photo.put(
        OrderFields.OF_SHEET.name(), mark.isEmpty() ? row.getOrDefault(CrewTabs.SHEET, "") : "");
    photo.put(OrderFields.VIEW.name(), View.BEFORE.word());
    photo.put(
        OrderFields.TAKEN.name(),
        row.getOrDefault(CrewTabs.ON, start.getOrDefault(CrewTabs.ON, "")));
    photo.put(WRITTEN_BY, row.getOrDefault(CrewTabs.BY, start.getOrDefault(CrewTabs.BY, "")));
    tables.added(JobTable.PHOTOS).add(photo);
  }

  private void added(JobTable table, SheetTable rows) {
    for (RowSource.Line line : rows.lines()) {
      Map<String, String> row = CrewTabs.row(rows, line);
      for (Field<?> field : TableGuide.fields(table).values()) {
        if (field.isRequired() && !row.containsKey(field.name())) {
          tables.problem(rows, line, field.name(), "it is empty; fill it in, or clear the line");
        }
      }
      readable(table, rows, line, Map.copyOf(row), row);
      row.put(WRITTEN_BY, start.getOrDefault(CrewTabs.BY, ""));
      tables.added(table).add(row);
    }
  }
}
