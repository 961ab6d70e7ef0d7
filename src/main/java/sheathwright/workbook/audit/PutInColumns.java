package sheathwright.workbook.audit;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import org.apache.poi.ss.util.CellReference;

/**
 * Columns that were put into the tabs of a workbook. Each is told once; the workbook without them,
 * its formulas pointing where they would, is held against what was written cell by cell.
 */
final class PutInColumns {

  /** Stands for a column that nobody wrote, where a formula points at it. */
  static final int NEW = -1;

  private final Reading now;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, TreeSet<Integer>> columns = new LinkedHashMap<>();

  /**
   * Looks for them.
   *
   * @param tabs what each tab that was written is called now
   */
  PutInColumns(Reading was, Reading now, Map<String, String> tabs) {
    this.now = now;
    tabs.forEach(
        (tab, other) -> {
          Pane stands = now.panes().get(other);
          TreeSet<Integer> putIn = putIn(was.panes().get(tab), stands);
          if (!putIn.isEmpty()) {
            columns.put(other, putIn);
            putIn.forEach(column -> findings.add(finding(tab, stands, column)));
          }
        });
  }

  private static TreeSet<Integer> putIn(Pane was, Pane now) {
    if (was.isOpen() || now.columns() <= was.columns()) {
      return new TreeSet<>();
    }
    Alignment across = Alignment.of(was.turned(), now.turned());
    return across.isSorted() || !across.gone().isEmpty()
        ? new TreeSet<>()
        : new TreeSet<>(across.inserted());
  }

  private static Finding finding(String tab, Pane pane, int column) {
    String told =
        pane.rows().values().stream()
            .map(row -> row.getOrDefault(column, Held.NOTHING))
            .filter(held -> !held.isEmpty())
            .map(Held::said)
            .collect(joining(" | "));
    String letter = CellReference.convertNumToColString(column);
    return Finding.of(tab, "column", "", told, "column %s was put in".formatted(letter));
  }

  /** A finding for each. */
  List<Finding> findings() {
    return findings;
  }

  /** The workbook without them. */
  Reading without() {
    if (columns.isEmpty()) {
      return now;
    }
    Reading without = new Reading(now.isForOffice());
    now.panes().forEach((tab, pane) -> without.panes().put(tab, without(tab, pane)));
    now.names().forEach((name, formula) -> without.names().put(name, pointing(formula, "")));
    without.foreign().addAll(now.foreign());
    return without;
  }

  private Pane without(String tab, Pane pane) {
    return pane.across(before(tab), formula -> pointing(formula, tab));
  }

  private String pointing(String formula, String tab) {
    return FormulaText.across(formula, tab, (name, column) -> before(name).applyAsInt(column));
  }

  /** Where a column of a tab stood before. */
  private IntUnaryOperator before(String tab) {
    TreeSet<Integer> putIn = columns.getOrDefault(tab, new TreeSet<>());
    return column -> putIn.contains(column) ? NEW : column - putIn.headSet(column).size();
  }
}
