package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A line of a tab in the making: its cells from the left, and its height where that is set. */
public final class TabLine {

  private final List<TabCell> cells = new ArrayList<>();
  private double height = Double.NaN;

  /** The cell in a column, counted from 0. */
  TabCell cell(int column) {
    while (cells.size() <= column) {
      cells.add(null);
    }
    TabCell cell = cells.get(column);
    if (cell == null) {
      cell = new TabCell();
      cells.set(column, cell);
    }
    return cell;
  }

  /** Sets its height, in points. */
  public void height(double points) {
    height = points;
  }

  OptionalDouble height() {
    return Double.isNaN(height) ? OptionalDouble.empty() : OptionalDouble.of(height);
  }

  /** From the left; null where there is none. */
  List<TabCell> cells() {
    return cells;
  }
}
