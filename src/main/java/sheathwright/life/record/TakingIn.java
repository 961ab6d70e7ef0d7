package sheathwright.life.record;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide;
import sheathwright.job.life.MarkFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.life.View;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.Dates;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;

/**
 * Crew workbooks taken into a job's tables. A row that is new is added, a cell that only the crew
 * changed is changed; where two changed one cell differently both are said and nothing is written.
 * Taking in what was taken in changes nothing.
 */
public final class TakingIn {

  /** What may be said once for all rows. */
  private static final List<String> ONCE = List.of(CrewTabs.BY, CrewTabs.ON);

  /** What a finding is nothing without. */
  private static final List<String> NEEDED =
      List.of(CrewTabs.SHEET, CrewTabs.FINDING, CrewTabs.BY, CrewTabs.ON);

  /** Tells one crew's rows from another's. */
  private static final String WRITTEN_BY = "note_by";

  private static final String MARKS = JobTable.MARKS.file();

  private final JobFolder folder;
  private final TakenRows marks;
  private final AddedRows photos = new AddedRows(JobTable.PHOTOS);
  private final AddedRows log = new AddedRows(JobTable.LOG);
  private final List<Problem> problems = new ArrayList<>();

  /**
   * The tables of a job and what crews found.
   *
   * @throws ProblemsException with everything that is wrong with the workbooks, and each cell that
   *     two changed differently
   */
  public TakingIn(JobFolder folder, List<Path> workbooks) {
    this.folder = folder;
    marks = new TakenRows(MARKS, CrewTabs.marks(folder.job()));
    for (Path workbook : workbooks) {
      take(TableBook.in(workbook));
    }
    problems.addAll(marks.conflicts());
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }

  private void take(TableBook book) {
    List<String> tabs =
        book.tabs().stream().filter(tab -> tab.startsWith(CrewTabs.OF_A_PLANE)).toList();
    if (tabs.isEmpty()) {
      problems.add(
          new Problem(
              book.name(),
              0,
              "",
              "it is no crew's workbook: no tab of it is called %sand a plane; name one that the command crew wrote"
                  .formatted(CrewTabs.OF_A_PLANE)));
      return;
    }
    Map<String, String> start = start(book);
    RowSource kept = Revisions.kept(book).get(JobTable.MARKS.word());
    Map<String, Map<String, String>> before = new LinkedHashMap<>();
    if (kept != null) {
      CrewTabs.rows(kept).forEach(row -> before.put(row.get(CrewTabs.MARK), row));
    }
    Set<String> named = new LinkedHashSet<>(before.keySet());
    for (String tab : tabs) {
      book.table(tab, CrewTabs.COLUMNS).ifPresent(rows -> take(rows, start, before, named));
    }
    book.table(CrewTabs.LOG, TableGuide.fields(JobTable.LOG).keySet())
        .ifPresent(table -> takeLog(table, start.getOrDefault(CrewTabs.BY, "")));
  }

  /** What is said once for all rows. */
  private static Map<String, String> start(TableBook book) {
    Map<String, String> start = new LinkedHashMap<>();
    book.table(CrewTabs.START, List.of("key", "value"))
        .ifPresent(
            table ->
                CrewTabs.rows(table)
                    .forEach(
                        row ->
                            start.put(row.getOrDefault("key", ""), row.getOrDefault("value", ""))));
    return start;
  }

  private void take(
      SheetTable rows,
      Map<String, String> start,
      Map<String, Map<String, String>> before,
      Set<String> named) {
    for (RowSource.Line line : rows.lines()) {
      Map<String, String> row = CrewTabs.row(rows, line);
      Map<String, String> was = before.getOrDefault(row.get(CrewTabs.MARK), Map.of());
      Map<String, String> found = new LinkedHashMap<>();
      for (String column : CrewTabs.FOUND) {
        String text = row.getOrDefault(column, "");
        if (!TableChanges.isSame(text, was.getOrDefault(column, ""))) {
          found.put(column, text);
        }
      }
      boolean hasPhoto = row.containsKey(CrewTabs.PHOTO);
      if (found.isEmpty() && !hasPhoto) {
        continue;
      }
      String mark = row.getOrDefault(CrewTabs.MARK, "");
      if (was.isEmpty() && !found.isEmpty()) {
        mark = newName(row.getOrDefault(CrewTabs.SHEET, ""), named);
        complete(rows, line, row, start, found, mark);
      }
      readable(rows, line, found);
      if (!found.isEmpty()) {
        marks.take(mark, was, found, rows, line);
      }
      if (hasPhoto) {
        photo(row, mark, start);
      }
    }
  }

  /** What was found anew is told with its place, who says so, and when. */
  private void complete(
      SheetTable rows,
      RowSource.Line line,
      Map<String, String> row,
      Map<String, String> start,
      Map<String, String> found,
      String mark) {
    for (String once : ONCE) {
      found.putIfAbsent(once, start.getOrDefault(once, ""));
    }
    found.put(CrewTabs.PLANE, row.getOrDefault(CrewTabs.PLANE, ""));
    found.put(CrewTabs.SHEET, row.getOrDefault(CrewTabs.SHEET, ""));
    if (!marks.has(mark)) {
      found.put(MarkFields.STAGE_FOUND.name(), stageFound());
    }
    for (String column : NEEDED) {
      if (found.getOrDefault(column, "").isEmpty()) {
        String message = "it is empty, and something is said of this place; fill it in";
        String orOnce = ", or once for all rows on the tab " + CrewTabs.START;
        problems.add(
            rows.problem(
                line.number(), column, ONCE.contains(column) ? message + orOnce : message));
      }
    }
  }

  private String stageFound() {
    boolean isOpened = folder.stage().isAtLeast(Stage.OPENED);
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
  private void readable(SheetTable rows, RowSource.Line line, Map<String, String> found) {
    found.replaceAll(
        (column, text) -> {
          Field<?> field = CrewTabs.columns().get(column);
          if (field == null || text.isEmpty()) {
            return text;
          }
          try {
            field.read(column, text, Source.GIVEN);
            return column.equals(CrewTabs.ON) ? Dates.read(text).toString() : text;
          } catch (RefusedException refused) {
            problems.add(rows.problem(line.number(), column, refused.getMessage()));
            return text;
          }
        });
  }

  private void photo(Map<String, String> row, String mark, Map<String, String> start) {
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
    photos.add(photo);
  }

  private void takeLog(SheetTable table, String by) {
    for (RowSource.Line line : table.lines()) {
      Map<String, String> row = CrewTabs.row(table, line);
      for (Field<?> field : OrderFields.LOG) {
        String text = row.getOrDefault(field.name(), "");
        try {
          if (field.isRequired() || !text.isEmpty()) {
            field.read(field.name(), text, Source.GIVEN);
          }
        } catch (RefusedException refused) {
          problems.add(table.problem(line.number(), field.name(), refused.getMessage()));
        }
      }
      row.put(WRITTEN_BY, by);
      log.add(row);
    }
  }

  /**
   * Writes what was taken in, all or nothing.
   *
   * @return what changed, a line each; none where nothing did
   */
  public List<String> write() {
    TableText marksText = text(JobTable.MARKS);
    List<String> said = new ArrayList<>();
    for (TakenRows.Change change : marks.changes()) {
      for (String column : change.cells().keySet()) {
        marksText = marksText.withColumn(column);
      }
      Map<String, String> row = new LinkedHashMap<>(change.cells());
      if (change.isNew()) {
        row.put(CrewTabs.MARK, change.mark());
        marksText = marksText.withColumn(CrewTabs.MARK).withRow(row);
      } else {
        marksText = marksText.with(CrewTabs.MARK, change.mark(), row);
      }
      said.add(MARKS + ": " + change);
    }
    List<TableText> written = new ArrayList<>();
    if (!said.isEmpty()) {
      written.add(marksText);
    }
    photos.onto(text(JobTable.PHOTOS), said).ifPresent(written::add);
    log.onto(text(JobTable.LOG), said).ifPresent(written::add);
    if (written.isEmpty()) {
      return said;
    }
    Job.of(folder.with(written.toArray(TableText[]::new)));
    Writing writing = new Writing(folder.path());
    written.forEach(writing::with);
    writing.write();
    return said;
  }

  private TableText text(JobTable table) {
    return folder.text(table, List.copyOf(TableGuide.fields(table).values()));
  }
}
