package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
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
  private final List<BitSet> owned = new ArrayList<>();

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
      BitSet columns = new BitSet();
      for (int column = 0; column < row.size(); column++) {
        Traced value = row.get(column);
        if (CellNotation.column(row, value) == column && !isElsewhere.test(value)) {
          columns.set(column);
        }
      }
      owned.add(columns);
    }
  }

  /** Whether a cell, or the first of its row that holds the same value, is the value's place. */
  boolean owns(int row, Traced value) {
    return owned.get(row).get(CellNotation.column(roll.rows().get(row), value));
  }

  /** Hands over each value that has its place in this list, and the place. */
  void places(BiConsumer<Traced, Place> into) {
    for (int row = 0; row < owned.size(); row++) {
      List<Traced> values = roll.rows().get(row);
      for (int column : owned.get(row).stream().toArray()) {
        into.accept(values.get(column), new Place(tab.name(), firstLine + row, column, ""));
      }
    }
  }

  /** A row's cells can also be pointed at by their neighbors where they only link elsewhere. */
  CellNotation notation(CellNotation alone, int row) {
    return alone.inRow(firstLine + row, roll.rows().get(row));
  }

  /** Where the cells of one column stand. */
  List<String> addressesOf(String column) {
    int place = roll.columns().indexOf(column);
    return IntStream.range(0, roll.rows().size())
        .mapToObj(row -> new Place(tab.name(), firstLine + row, place, "").address())
        .toList();
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
