package sheathwright.life.back;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.job.JobTable;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.RowSource;
import sheathwright.life.record.TableText;

/**
 * The rows of a table that several change, cell by cell: each change is held against what stood
 * there when its workbook was written and what stands there now.
 */
final class TakenRows {

  private final JobTable table;
  private final List<String> keys;
  private final SameCells same;
  private final Map<String, Taken> rows = new LinkedHashMap<>();

  /** What a cell says now, and who says so. */
  private record Cell(String text, String by) {}

  /**
   * A row as it stands, and what is written of it.
   *
   * @param line of the table, counted from 0; none while it is not there yet
   */
  private record Taken(
      Map<String, String> key,
      Optional<Integer> line,
      Map<String, Cell> cells,
      Map<String, String> written) {}

  /**
   * The rows as they stand.
   *
   * @param keys the columns that tell one from another
   */
  TakenRows(JobTable table, List<String> keys, List<Map<String, String>> now) {
    this.table = table;
    this.keys = keys;
    this.same = new SameCells(table);
    for (int i = 0; i < now.size(); i++) {
      if (name(now.get(i)).isEmpty()) {
        continue; // a line of notes
      }
      Map<String, Cell> cells = new LinkedHashMap<>();
      now.get(i).forEach((column, text) -> cells.put(column, new Cell(text, table.file())));
      rows.putIfAbsent(
          name(now.get(i)),
          new Taken(key(now.get(i)), Optional.of(i), cells, new LinkedHashMap<>()));
    }
  }

  /** What tells a row from others. */
  private Map<String, String> key(Map<String, String> row) {
    Map<String, String> key = new LinkedHashMap<>();
    keys.forEach(column -> key.put(column, row.getOrDefault(column, "")));
    return key;
  }

  /** What a row is called. */
  String name(Map<String, String> row) {
    return keys.stream()
        .map(column -> same.plain(row, column, row.getOrDefault(column, "")))
        .filter(text -> !text.isEmpty())
        .collect(joining(" "));
  }

  /**
   * Takes what a workbook says of a row.
   *
   * @param row with the cells that tell it from others
   * @param was what stood there when the workbook was written; nothing where it was new
   * @param found what it says otherwise
   * @param signed who says so and when: written with what is new, over what stood there
   * @param conflicts takes each cell that two changed differently
   */
  void take(
      Map<String, String> row,
      Map<String, String> was,
      Map<String, String> found,
      Map<String, String> signed,
      SheetTable source,
      RowSource.Line line,
      List<Problem> conflicts) {
    String name = name(row);
    boolean isNew = !rows.containsKey(name);
    if (isNew && !was.isEmpty()) {
      String message = "%s is changed here, but gone from %s; add it there, or take it out here";
      conflicts.add(
          source.problem(line.number(), keys.get(0), message.formatted(name, table.file())));
      return;
    }
    Taken now =
        rows.computeIfAbsent(
            name,
            any ->
                new Taken(
                    key(row), Optional.empty(), new LinkedHashMap<>(), new LinkedHashMap<>()));
    int before = now.written().size();
    found.forEach(
        (column, text) -> {
          Cell stands = now.cells().getOrDefault(column, new Cell("", table.file()));
          boolean saysSo = same.isSame(row, column, stands.text(), text);
          boolean isAsBefore =
              same.isSame(row, column, stands.text(), was.getOrDefault(column, ""));
          if (!saysSo && (isNew || isAsBefore)) {
            now.written().put(column, text);
            now.cells().put(column, new Cell(text, source.name()));
          } else if (!saysSo) {
            conflicts.add(
                source.problem(
                    line.number(),
                    column,
                    "%s: \"%s\" is said here, but \"%s\" in %s; ask both, and make one say what the other does"
                        .formatted(name, text, stands.text(), stands.by())));
          }
        });
    if (isNew || now.written().size() > before) {
      now.written().putAll(signed);
    }
  }

  /** Whether there is a row of this name. */
  boolean has(String name) {
    return rows.containsKey(name);
  }

  /** The columns of all that is written. */
  Set<String> columns() {
    Set<String> columns = new LinkedHashSet<>(keys);
    rows.values().forEach(row -> columns.addAll(row.written().keySet()));
    return columns;
  }

  /**
   * The table with what was taken in; none where that is nothing.
   *
   * @param said takes a line for each row that is new or changed
   */
  Optional<TableText> onto(TableText text, List<String> said) {
    TableText longer = text;
    for (Map.Entry<String, Taken> each : rows.entrySet()) {
      Taken row = each.getValue();
      if (row.line().isPresent() && row.written().isEmpty()) {
        continue;
      }
      for (String column : row.written().keySet()) {
        longer = longer.withColumn(column);
      }
      if (row.line().isPresent()) {
        for (Map.Entry<String, String> cell : row.written().entrySet()) {
          longer = longer.withCell(row.line().get(), cell.getKey(), cell.getValue());
        }
      } else {
        for (String column : keys) {
          longer = longer.withColumn(column);
        }
        Map<String, String> cells = new LinkedHashMap<>(row.written());
        cells.putAll(row.key());
        longer = longer.withRow(cells);
      }
      said.add(said(each.getKey(), row));
    }
    return longer == text ? Optional.empty() : Optional.of(longer);
  }

  private String said(String name, Taken row) {
    List<String> cells = new ArrayList<>();
    row.written().forEach((column, text) -> cells.add(text.isEmpty() ? column + " blank" : text));
    return "%s: %s %s (%s)"
        .formatted(
            table.file(),
            name,
            row.line().isPresent() ? "changed" : "new",
            String.join(", ", cells));
  }
}
