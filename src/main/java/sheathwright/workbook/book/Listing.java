package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;

/**
 * A list as it stands on a tab. A cell of the list is either the place of its value, and then its
 * formula points at its neighbors in the row, or a link to a place elsewhere.
 */
public final class Listing {

  private final Tab tab;
  private final Roll roll;
  private final int firstLine;
  private final List<Map<Traced, Integer>> owned = new ArrayList<>();

  Listing(Tab tab, Roll roll, int firstLine) {
    this.tab = tab;
    this.roll = roll;
    this.firstLine = firstLine;
  }

  /**
   * Decides, once every single value has its place, which cells are places of their own.
   *
   * @param isElsewhere whether a value stands, or is to stand, on another page
   */
  void settle(Predicate<Traced> isElsewhere) {
    for (List<Traced> row : roll.rows()) {
      Map<Traced, Integer> columns = new IdentityHashMap<>();
      for (int column = 0; column < row.size(); column++) {
        Traced value = row.get(column);
        if (!isElsewhere.test(value)) {
          columns.putIfAbsent(value, column);
        }
      }
      owned.add(columns);
    }
  }

  boolean owns(int row, Traced value) {
    return owned.get(row).containsKey(value);
  }

  /** A row's cells can also be pointed at by their neighbors where they only link elsewhere. */
  CellNotation notation(CellNotation alone, int row) {
    Map<Traced, Integer> columns = new IdentityHashMap<>();
    List<Traced> cells = roll.rows().get(row);
    for (int column = cells.size() - 1; column >= 0; column--) {
      columns.put(cells.get(column), column);
    }
    return alone.inRow(firstLine + row, columns);
  }

  Place place(int row, Traced value) {
    return new Place(tab.name(), firstLine + row, owned.get(row).get(value), "");
  }

  public Tab tab() {
    return tab;
  }

  public int firstLine() {
    return firstLine;
  }

  public Roll roll() {
    return roll;
  }
}
