package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import org.apache.poi.ss.util.CellReference;

/**
 * Columns that were put into the tabs of a workbook, or taken out of them. Each is told once; the
 * workbook with its columns where they were, its formulas pointing where they would, is held
 * against what was written cell by cell.
 */
final class Columns {

  private final Reading now;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, ColumnPairs> pairs = new LinkedHashMap<>();
  private final Map<String, NavigableSet<Integer>> gone = new LinkedHashMap<>();

  /**
   * Looks for them.
   *
   * @param tabs what each tab that was written is called now
   */
  Columns(Reading was, Reading now, Map<String, String> tabs) {
    this.now = now;
    tabs.forEach(
        (tab, other) -> {
          Pane written = was.panes().get(tab);
          Pane stands = now.panes().get(other);
          ColumnPairs pair = ColumnPairs.of(written, stands);
          TreeSet<Integer> missing = pair.gone();
          if (!missing.isEmpty()) {
            missing.removeIf(column -> isPointedAt(other, column, pair));
          }
          pairs.put(other, pair);
          gone.put(tab, missing);
          pair.putIn().forEach(column -> findings.add(finding(tab, stands, column)));
        });
  }

  /** Whether a column only holds nothing any more: a column that is gone leaves nobody there. */
  private boolean isPointedAt(String tab, int column, ColumnPairs pair) {
    return pair.isLast(column)
        && now.names().values().stream()
            .flatMap(formula -> Spot.of(formula).stream())
            .anyMatch(spot -> spot.sheet().equals(tab) && spot.column() == column);
  }

  private static Finding finding(String tab, Pane pane, int column) {
    String letter = CellReference.convertNumToColString(column);
    return Finding.of(
        tab,
        "column",
        "",
        Pane.told(pane.column(column)),
        "column %s was put in".formatted(letter));
  }

  /** A finding for each that was put in. */
  List<Finding> findings() {
    return findings;
  }

  /** The columns of a tab that are gone, counted as they were. */
  NavigableSet<Integer> gone(String tab) {
    return gone.getOrDefault(tab, new TreeSet<>());
  }

  /** The workbook with its columns where they were. */
  Reading back() {
    if (pairs.values().stream().allMatch(ColumnPairs::isSame)) {
      return now;
    }
    return now.moved(this::back, this::back);
  }

  private Optional<Spot> back(Spot spot) {
    IntUnaryOperator before = before(spot.sheet());
    int first = spot.column();
    int last = spot.lastColumn();
    while (first <= last && before.applyAsInt(first) < 0) {
      first++;
    }
    while (last >= first && before.applyAsInt(last) < 0) {
      last--;
    }
    return first > last
        ? Optional.empty()
        : Optional.of(
            new Spot(
                spot.sheet(),
                spot.row(),
                before.applyAsInt(first),
                spot.lastRow(),
                before.applyAsInt(last)));
  }

  private Pane back(Pane pane) {
    return pane.across(before(pane.name()));
  }

  private IntUnaryOperator before(String tab) {
    ColumnPairs pair = pairs.get(tab);
    return pair == null ? column -> column : pair::before;
  }
}
