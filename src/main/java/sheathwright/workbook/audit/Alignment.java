package sheathwright.workbook.audit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which line of a tab is which: where each line that was written stands now. A line is known again
 * by what stands in it and by what its formulas do, wherever the cells stand that they do it to.
 */
final class Alignment {

  /** No line is looked for further from where it was than this many lines. */
  private static final int REACH = 60;

  private static final int GONE = -1;

  private final Pane was;
  private final Pane now;
  private final int lines;
  private final int lastNow;
  private final Map<String, String> skeletons = new HashMap<>();
  private final int[] place;
  private boolean isSorted;

  private Alignment(Pane was, Pane now) {
    this.was = was;
    this.now = now;
    lastNow = Math.min(last(now), last(was) + REACH);
    lines = 1 + Math.max(last(was), lastNow);
    place = new int[lines];
    Arrays.setAll(place, row -> row);
  }

  private static int last(Pane pane) {
    return pane.rows().isEmpty() ? -1 : pane.rows().lastKey();
  }

  /** The lines of a tab as it was in the tab as it is. */
  static Alignment of(Pane was, Pane now) {
    Alignment alignment = new Alignment(was, now);
    int differing = alignment.differing();
    if (differing > 1) {
      alignment.sorted();
    }
    if (!alignment.isSorted && differing > 1) {
      alignment.align(differing);
    }
    return alignment;
  }

  /** Where a line stands now; less than 0 where it is gone. */
  int now(int row) {
    return row < lines ? place[row] : row;
  }

  /** Whether lines stand in another order, and none is gone or new. */
  boolean isSorted() {
    return isSorted;
  }

  /** The lines that hold something and are gone, counted from 0. */
  List<Integer> gone() {
    List<Integer> gone = new ArrayList<>();
    for (int row = 0; row < lines; row++) {
      if (place[row] == GONE) {
        gone.add(row);
      }
    }
    return gone;
  }

  /** The lines that stand somewhere else than where those before them would put them. */
  List<Integer> moved() {
    List<Integer> moved = new ArrayList<>();
    for (int row = 0; row < lines; row++) {
      if (place[row] != row) {
        moved.add(row);
      }
    }
    return moved;
  }

  /** The lines that were not there, as they are counted now. */
  List<Integer> inserted() {
    TreeSet<Integer> inserted = new TreeSet<>();
    for (int row = 0; row <= lastNow; row++) {
      inserted.add(row);
    }
    for (int row : place) {
      inserted.remove(row);
    }
    return List.copyOf(inserted);
  }

  private int differing() {
    int differing = 0;
    for (int row = 0; row < lines; row++) {
      differing += isSame(row, row) ? 0 : 1;
    }
    return differing;
  }

  /** Lines put into another order are all there, none of them changed. */
  private void sorted() {
    Map<List<String>, Deque<Integer>> there = new HashMap<>();
    List<Integer> changed = new ArrayList<>();
    for (int row = 0; row < lines; row++) {
      if (!isSame(row, row)) {
        changed.add(row);
        there.computeIfAbsent(told(now, row), none -> new ArrayDeque<>()).add(row);
      }
    }
    Map<Integer, Integer> found = new HashMap<>();
    for (int row : changed) {
      Deque<Integer> same = there.get(told(was, row));
      if (same == null || same.isEmpty()) {
        return;
      }
      found.put(row, same.remove());
    }
    boolean areNeighbors = changed.get(changed.size() - 1) - changed.get(0) < 2 * changed.size();
    if (areNeighbors && isNotOnlyShifted(changed)) {
      found.forEach((row, stands) -> place[row] = stands);
      isSorted = true;
    }
  }

  /** Sorting moves lines that hold something; a blank one in between is an inserted one. */
  private boolean isNotOnlyShifted(List<Integer> changed) {
    return changed.stream().noneMatch(row -> told(was, row).isEmpty());
  }

  /** Lines gone and new, as few as tell the difference. */
  private void align(int differing) {
    int first = 0;
    while (first < lines && isSame(first, first)) {
      first++;
    }
    int endOfWas = last(was) + 1;
    int endOfNow = lastNow + 1;
    while (endOfWas > first && endOfNow > first && isSame(endOfWas - 1, endOfNow - 1)) {
      endOfWas--;
      endOfNow--;
    }
    int rows = endOfWas - first;
    int others = endOfNow - first;
    if (Math.abs(rows - others) > REACH) {
      return;
    }
    int[][] cost = costs(first, rows, others);
    if (cost[rows][others] >= differing) {
      return;
    }
    follow(cost, first, rows, others);
    for (int row = endOfWas; row < lines; row++) {
      place[row] = row + endOfNow - endOfWas;
    }
  }

  /** What telling the first so many lines from so many others takes, in changed lines. */
  private int[][] costs(int first, int rows, int others) {
    int[][] cost = new int[rows + 1][others + 1];
    for (int i = 0; i <= rows; i++) {
      Arrays.fill(cost[i], Integer.MAX_VALUE / 2);
      for (int j = Math.max(0, i - REACH); j <= Math.min(others, i + REACH); j++) {
        if (i == 0 || j == 0) {
          cost[i][j] = i + j;
        } else {
          int both = cost[i - 1][j - 1] + (isSame(first + i - 1, first + j - 1) ? 0 : 1);
          cost[i][j] = Math.min(both, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        }
      }
    }
    return cost;
  }

  private void follow(int[][] cost, int first, int rows, int others) {
    int i = rows;
    int j = others;
    while (i > 0 || j > 0) {
      boolean isPair =
          i > 0
              && j > 0
              && cost[i][j] == cost[i - 1][j - 1] + (isSame(first + i - 1, first + j - 1) ? 0 : 1);
      if (isPair) {
        i--;
        j--;
        place[first + i] = first + j;
      } else if (i > 0 && cost[i][j] == cost[i - 1][j] + 1) {
        i--;
        place[first + i] = GONE;
      } else {
        j--;
      }
    }
  }

  private boolean isSame(int row, int other) {
    TreeMap<Integer, Held> one = was.rows().get(row);
    TreeMap<Integer, Held> two = now.rows().get(other);
    if (one == null || two == null) {
      return isBlank(one) && isBlank(two);
    }
    TreeSet<Integer> columns = new TreeSet<>(one.keySet());
    columns.addAll(two.keySet());
    for (int column : columns) {
      Held held = one.getOrDefault(column, Held.NOTHING);
      Held stands = two.getOrDefault(column, Held.NOTHING);
      boolean isSame =
          held.isFormula() && stands.isFormula()
              ? skeleton(held.formula()).equals(skeleton(stands.formula()))
              : held.isFormula() == stands.isFormula() && held.saysTheSameAs(stands);
      if (!isSame) {
        return false;
      }
    }
    return true;
  }

  private static boolean isBlank(TreeMap<Integer, Held> cells) {
    return cells == null || cells.values().stream().allMatch(Held::isEmpty);
  }

  /** What a line says, in a form that can be looked up. */
  private List<String> told(Pane pane, int row) {
    List<String> told = new ArrayList<>();
    pane.rows()
        .getOrDefault(row, new TreeMap<>())
        .forEach(
            (column, held) -> {
              if (!held.isEmpty()) {
                told.add(
                    column + (held.isFormula() ? "=" + skeleton(held.formula()) : held.said()));
              }
            });
    return told;
  }

  private String skeleton(String formula) {
    return skeletons.computeIfAbsent(formula, FormulaText::skeleton);
  }
}
