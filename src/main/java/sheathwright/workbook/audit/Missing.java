package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.poi.ss.util.CellReference;

/**
 * Lines and columns that are gone, each told once, with the cells that went with it and what
 * pointed at them; and columns in which nothing stands any more.
 */
final class Missing {

  private final Standing standing;
  private final Untied untied;

  Missing(Reading was, Standing standing) {
    this.standing = standing;
    untied = new Untied(was);
  }

  /** The lines of a tab that are gone, each with its cells and what pointed at them. */
  Map<Finding, List<Change>> lines(Pane written) {
    Map<Finding, List<Change>> findings = new LinkedHashMap<>();
    NavigableSet<Integer> gone = standing.goneLines(written.name());
    for (int row : gone) {
      Map<Integer, Held> cells = written.rows().getOrDefault(row, new TreeMap<>());
      List<Change> changes = new ArrayList<>();
      cells.forEach(
          (column, held) ->
              changes.add(new Change(written.name(), row, column, held, Held.NOTHING)));
      Predicate<Spot> isGone =
          spot ->
              spot.sheet().equals(written.name())
                  && spot.row() == row
                  && isAll(gone, row, spot.lastRow());
      changes.addAll(untied.formulas(isGone));
      findings.put(finding(written, "line", "line " + (row + 1), cells, isGone), changes);
    }
    return findings;
  }

  /** The columns of a tab that are gone, in the same way. */
  Map<Finding, List<Change>> columns(Pane written) {
    Map<Finding, List<Change>> findings = new LinkedHashMap<>();
    NavigableSet<Integer> gone = standing.goneColumns(written.name());
    for (int column : gone) {
      Map<Integer, Held> cells = written.column(column);
      List<Change> changes = emptied(written, column);
      Predicate<Spot> isGone =
          spot ->
              spot.sheet().equals(written.name())
                  && spot.column() == column
                  && isAll(gone, column, spot.lastColumn());
      changes.addAll(untied.formulas(isGone));
      findings.put(finding(written, "column", said(column), cells, isGone), changes);
    }
    return findings;
  }

  private static boolean isAll(NavigableSet<Integer> gone, int first, int last) {
    return last < first + gone.size()
        && gone.subSet(first, true, last, true).size() == last - first + 1;
  }

  private Finding finding(
      Pane written, String kind, String said, Map<Integer, Held> cells, Predicate<Spot> isGone) {
    Set<String> names = untied.names(isGone);
    String words = said + " is gone, and what points at it";
    return Finding.of(
        written.name(),
        kind,
        Pane.told(cells),
        "",
        names.isEmpty() ? words : words + ": " + String.join(", ", names));
  }

  private static String said(int column) {
    return "column " + CellReference.convertNumToColString(column);
  }

  /** Columns that are there, and in which nothing that was locked stands any more. */
  Map<Integer, Finding> emptied(Pane written, Pane stands) {
    Map<Integer, Finding> emptied = new TreeMap<>();
    Alignment lines = standing.lines(written.name());
    Set<Integer> columns = new TreeSet<>();
    for (int column = 0; column < written.columns(); column++) {
      columns.add(column);
    }
    columns.removeAll(standing.goneColumns(written.name()));
    for (int column : columns) {
      List<Integer> locked = new ArrayList<>();
      written
          .column(column)
          .forEach(
              (row, held) -> {
                if (!held.isEmpty() && !held.isOpen() && lines.now(row) >= 0) {
                  locked.add(lines.now(row));
                }
              });
      if (locked.size() > 1 && locked.stream().allMatch(row -> stands.at(row, column).isEmpty())) {
        emptied.put(
            column,
            Finding.of(
                written.name(),
                "column",
                Pane.told(written.column(column)),
                "",
                said(column) + " was emptied, and what points at it"));
      }
    }
    return emptied;
  }

  /** The cells of a column, and none of them any more. */
  List<Change> emptied(Pane written, int column) {
    List<Change> changes = new ArrayList<>();
    written
        .column(column)
        .forEach(
            (row, held) -> {
              if (!held.isEmpty()) {
                changes.add(new Change(written.name(), row, column, held, Held.NOTHING));
              }
            });
    return changes;
  }
}
