package sheathwright.workbook.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/** Where what was written stands now: tabs under other names, lines and columns gone or moved. */
final class Standing implements References.Places {

  private final Tabs tabs;
  private final Columns columns;
  private final Map<String, Alignment> lines = new HashMap<>();

  /**
   * Looks for every line.
   *
   * @param now with its columns where they were
   */
  Standing(Reading was, Reading now, Tabs tabs, Columns columns) {
    this.tabs = tabs;
    this.columns = columns;
    tabs.names()
        .forEach(
            (tab, other) ->
                lines.put(tab, Alignment.of(was.panes().get(tab), now.panes().get(other))));
  }

  /** The lines of a tab that is there. */
  Alignment lines(String tab) {
    return lines.get(tab);
  }

  /** The columns of a tab that are gone. */
  NavigableSet<Integer> goneColumns(String tab) {
    return columns.gone(tab);
  }

  /** The lines of a tab that are gone. */
  NavigableSet<Integer> goneLines(String tab) {
    return lines.containsKey(tab) ? new TreeSet<>(lines.get(tab).gone()) : new TreeSet<>();
  }

  /** Whether every line and column stands where it stood, on the tabs that are there. */
  boolean isAsWritten() {
    return lines.entrySet().stream()
        .allMatch(tab -> tab.getValue().moved().isEmpty() && columns.gone(tab.getKey()).isEmpty());
  }

  /** Under the names that tabs had; a range is what is left of it. */
  @Override
  public Optional<Spot> of(Spot spot) {
    String tab = tabs.written(spot.sheet());
    NavigableSet<Integer> gone = columns.gone(tab);
    int left = spot.column();
    int right = spot.lastColumn();
    while (left <= right && gone.contains(left)) {
      left++;
    }
    while (right >= left && gone.contains(right)) {
      right--;
    }
    Alignment alignment = lines.get(tab);
    boolean isRange = spot.row() != spot.lastRow();
    if (alignment == null || isRange && alignment.isSorted()) {
      return left > right
          ? Optional.empty()
          : Optional.of(new Spot(spot.sheet(), spot.row(), left, spot.lastRow(), right));
    }
    int first = spot.row();
    int last = spot.lastRow();
    while (first <= last && alignment.now(first) < 0) {
      first++;
    }
    while (last >= first && alignment.now(last) < 0) {
      last--;
    }
    return left > right || first > last
        ? Optional.empty()
        : Optional.of(
            new Spot(spot.sheet(), alignment.now(first), left, alignment.now(last), right));
  }
}
