package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Which column of a tab is which: those that are told in as few cells as can be, if a column that
 * is gone or new counts as its cells and two more. In which lines the cells stand does not matter.
 */
final class ColumnPairs {

  /** A column that was not written. */
  static final int NEW = -1;

  /** A cell that somebody moved by one column is told as two cells, not as a column put in. */
  private static final int COLUMN = 2;

  private final List<Map<String, Integer>> was;
  private final List<Map<String, Integer>> now;
  private final int[] before;

  private ColumnPairs(List<Map<String, Integer>> was, List<Map<String, Integer>> now) {
    this.was = was;
    this.now = now;
    while (isLittle(was, now)) {
      now.add(new HashMap<>());
    }
    while (isLittle(now, was)) {
      was.add(new HashMap<>());
    }
    before = new int[now.size()];
    Arrays.setAll(before, column -> column);
  }

  /** Whether what stands right of the other's last column is one cell, which is told as a cell. */
  private static boolean isLittle(List<Map<String, Integer>> one, List<Map<String, Integer>> two) {
    return one.size() > two.size() && count(one.get(two.size())) < COLUMN;
  }

  /** The columns of a tab as it is by the columns of the tab as it was. */
  static ColumnPairs of(Pane was, Pane now) {
    List<Map<String, Integer>> cells = cells(was);
    if (was.isOpen()) {
      return new ColumnPairs(cells, cells);
    }
    ColumnPairs pairs = new ColumnPairs(cells, cells(now));
    if (!pairs.was.equals(pairs.now)) {
      pairs.follow(pairs.costs());
    }
    return pairs;
  }

  private static List<Map<String, Integer>> cells(Pane pane) {
    List<Map<String, Integer>> columns = new ArrayList<>();
    for (int column = pane.columns(); column > 0; column--) {
      columns.add(new HashMap<>());
    }
    for (Map<Integer, Held> row : pane.rows().values()) {
      row.forEach(
          (column, held) -> {
            if (!held.isEmpty()) {
              String says =
                  held.isFormula() ? "=" + FormulaText.shape(held.formula()) : held.said();
              columns.get(column).merge(says, 1, Integer::sum);
            }
          });
    }
    return columns;
  }

  private int[][] costs() {
    int[][] cost = new int[was.size() + 1][now.size() + 1];
    for (int i = 0; i <= was.size(); i++) {
      for (int j = 0; j <= now.size(); j++) {
        int least = i == 0 && j == 0 ? 0 : Integer.MAX_VALUE;
        if (i > 0 && j > 0) {
          least = cost[i - 1][j - 1] + changed(was.get(i - 1), now.get(j - 1));
        }
        if (i > 0) {
          least = Math.min(least, cost[i - 1][j] + alone(was.get(i - 1)));
        }
        if (j > 0) {
          least = Math.min(least, cost[i][j - 1] + alone(now.get(j - 1)));
        }
        cost[i][j] = least;
      }
    }
    return cost;
  }

  private static int changed(Map<String, Integer> one, Map<String, Integer> other) {
    return Math.max(missing(one, other), missing(other, one));
  }

  private static int missing(Map<String, Integer> one, Map<String, Integer> other) {
    int missing = 0;
    for (Map.Entry<String, Integer> cell : one.entrySet()) {
      missing += Math.max(0, cell.getValue() - other.getOrDefault(cell.getKey(), 0));
    }
    return missing;
  }

  private static int alone(Map<String, Integer> cells) {
    return COLUMN + count(cells);
  }

  private static int count(Map<String, Integer> cells) {
    return cells.values().stream().mapToInt(Integer::intValue).sum();
  }

  private void follow(int[][] cost) {
    int i = was.size();
    int j = now.size();
    while (i > 0 || j > 0) {
      boolean isPair =
          i > 0
              && j > 0
              && cost[i][j] == cost[i - 1][j - 1] + changed(was.get(i - 1), now.get(j - 1));
      if (isPair) {
        i--;
        j--;
        before[j] = i;
      } else if (j > 0 && cost[i][j] == cost[i][j - 1] + alone(now.get(j - 1))) {
        j--;
        before[j] = NEW;
      } else {
        i--;
      }
    }
  }

  /** Where a column stood that stands here now; less than 0 where it is new. */
  int before(int column) {
    return column < before.length ? before[column] : column;
  }

  /** Whether each stands where it stood. */
  boolean isSame() {
    return putIn().isEmpty() && gone().isEmpty();
  }

  /** The columns that were not written, counted as they are. */
  TreeSet<Integer> putIn() {
    TreeSet<Integer> putIn = new TreeSet<>();
    for (int column = 0; column < before.length; column++) {
      if (before[column] == NEW) {
        putIn.add(column);
      }
    }
    return putIn;
  }

  /** The columns that are gone, counted as they were. */
  TreeSet<Integer> gone() {
    TreeSet<Integer> gone = new TreeSet<>();
    for (int column = 0; column < was.size(); column++) {
      gone.add(column);
    }
    for (int column : before) {
      gone.remove(column);
    }
    return gone;
  }

  /** Whether all that stand now stood before a column that is gone. */
  boolean isLast(int column) {
    return column >= now.size();
  }
}
