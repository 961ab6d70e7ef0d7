package sheathwright.life.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.RowSource;

/**
 * The rows of a table that several change, cell by cell: each change is held against what stood
 * there when its workbook was written and what stands there now.
 */
final class TakenRows {

  private final String file;
  private final Map<String, Map<String, Cell>> rows = new LinkedHashMap<>();
  private final Map<String, Change> changes = new LinkedHashMap<>();
  private final List<Problem> conflicts = new ArrayList<>();

  /** What a cell says now, and who says so. */
  private record Cell(String text, String by) {}

  /**
   * What is written of one row.
   *
   * @param cells by column
   */
  record Change(String mark, boolean isNew, Map<String, String> cells) {

    @Override
    public String toString() {
      List<String> said = new ArrayList<>();
      cells.forEach((column, text) -> said.add(text.isEmpty() ? column + " blank" : text));
      said.removeIf(String::isEmpty);
      return "%s %s (%s)".formatted(mark, isNew ? "new" : "changed", String.join(", ", said));
    }
  }

  /**
   * The rows as they stand.
   *
   * @param file where they stand
   */
  TakenRows(String file, List<Map<String, String>> now) {

    this.file = file;
    now.forEach(row -> cells(row.get(CrewTabs.MARK)).putAll(told(row)));
  }

  private Map<String, Cell> cells(String name) {
    return rows.computeIfAbsent(name, any -> new LinkedHashMap<>());
  }

  private Map<String, Cell> told(Map<String, String> row) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    row.forEach((column, text) -> cells.put(column, new Cell(text, file)));
    return cells;
  }

  /**
   * Takes what a workbook says of a row.
   *
   * @param was what stood there when the workbook was written
   * @param found what it says otherwise
   */
  void take(
      String name,
      Map<String, String> was,
      Map<String, String> found,
      SheetTable source,
      RowSource.Line line) {
    boolean isNew = !rows.containsKey(name);
    Map<String, Cell> now = cells(name);
    Map<String, String> taken = new LinkedHashMap<>();
    found.forEach(
        (column, text) -> {
          Cell stands = now.getOrDefault(column, new Cell("", file));
          boolean isAsBefore = TableChanges.isSame(stands.text(), was.getOrDefault(column, ""));
          if (isNew || isAsBefore && !TableChanges.isSame(stands.text(), text)) {
            if (!text.isEmpty() || !isNew) {
              taken.put(column, text);
              now.put(column, new Cell(text, source.name()));
            }
          } else if (!TableChanges.isSame(stands.text(), text)) {
            conflicts.add(
                source.problem(
                    line.number(),
                    column,
                    "%s: \"%s\" is said here, but \"%s\" in %s; ask both, and make one say what the other does"
                        .formatted(name, text, stands.text(), stands.by())));
          }
        });
    if (!taken.isEmpty()) {
      Change before = changes.get(name);
      Map<String, String> all = new LinkedHashMap<>();
      if (before != null) {
        all.putAll(before.cells());
      }
      all.putAll(taken);
      changes.put(name, new Change(name, isNew || before != null && before.isNew(), all));
    }
  }

  /** Whether there is a row of this name. */
  boolean has(String name) {
    return rows.containsKey(name);
  }

  /** What is to be written. */
  List<Change> changes() {
    return List.copyOf(changes.values());
  }

  /** Cells that two changed differently. */
  List<Problem> conflicts() {
    return conflicts;
  }
}
