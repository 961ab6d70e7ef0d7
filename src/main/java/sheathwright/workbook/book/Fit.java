package sheathwright.workbook.book;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import sheathwright.workbook.file.Letters;
import sheathwright.workbook.part.CellStyle;
import sheathwright.workbook.part.Font;
import sheathwright.workbook.part.Sheet;

/**
 * Sees to it that no words of a tab are cut off: what is too wide for its place is broken into
 * lines, and a line of cells is made as tall as the words in it need.
 */
final class Fit {

  /** A screen draws letters a little wider than paper has them. */
  private static final double SLACK = 1.04;

  /** Left and right of the words in a cell, and each indention, in dots of a screen. */
  private static final double AIR = 6;

  private static final double INDENTION = 9;
  private static final double POINTS_A_DOT = 0.75;
  private static final double LINE = 1.2;
  private static final double ABOVE_AND_BELOW = 2;

  private final Tab tab;
  private final Map<Long, Integer> merged = new HashMap<>();
  private final double[] dots;

  /** For a tab whose cells are made one where they are to be. */
  Fit(Tab tab) {
    this.tab = tab;
    dots = IntStream.range(0, tab.across()).mapToDouble(tab.sheet()::dots).toArray();
    for (CellRangeAddress region : tab.sheet().merged()) {
      merged.put(place(region.getFirstRow(), region.getFirstColumn()), region.getLastColumn());
    }
  }

  /** Fits the words of a tab on which everything is written. */
  static void words(Tab tab) {
    Fit fit = new Fit(tab);
    List<TabLine> lines = tab.lines();
    for (int row = 0; row < lines.size(); row++) {
      if (lines.get(row) != null) {
        fit.line(row, lines.get(row));
      }
    }
  }

  private static long place(int row, int column) {
    return (long) row << Integer.SIZE | column;
  }

  /** Fits the words of one line. */
  void line(int row, TabLine line) {
    List<TabCell> cells = line.cells();
    double tall = line.height().orElse(Sheet.LINE);
    double needed = 0;
    for (int column = 0; column < cells.size(); column++) {
      TabCell cell = cells.get(column);
      if (cell != null && cell.style() != null && !cell.text().isEmpty()) {
        needed = Math.max(needed, needed(row, column, cell, cells));
      }
    }
    if (needed > tall) {
      line.height(needed);
    }
  }

  /** How tall the line must be for one cell of it, which is broken into lines if need be. */
  private double needed(int row, int column, TabCell cell, List<TabCell> cells) {
    Font font = cell.style().font();
    double size = font.points();
    int last = merged.getOrDefault(place(row, column), column);
    double own = points(column, last, cell.style());
    if (!cell.style().isBroken()) {
      double wide = Letters.wide(cell.text(), size, font.isBold()) * SLACK;
      if (wide <= points(column, free(column, last, cell.style(), cells), cell.style())) {
        return size * LINE;
      }
      cell.style(tab.broken(cell.style()));
    }
    return lines(cell.text(), cell.style(), own) * size * LINE + ABOVE_AND_BELOW;
  }

  private static int lines(String words, CellStyle style, double points) {
    Font font = style.font();
    return Letters.lines(words, font.points() * SLACK, font.isBold(), points);
  }

  /** How many lines words take that stand between two columns of a tab. */
  static int lines(Tab tab, String words, int first, int last, CellStyle style) {
    double wide = IntStream.rangeClosed(first, last).mapToDouble(tab.sheet()::dots).sum();
    return lines(words, style, points(wide, style));
  }

  /** The last column that words may run into: what begins at the left runs on where nothing is. */
  private int free(int column, int last, CellStyle style, List<TabCell> cells) {
    if (last > column || style.isAtTheRight()) {
      return last;
    }
    int free = column;
    while (free + 1 < dots.length && isFree(free + 1, cells)) {
      free++;
    }
    return free;
  }

  private static boolean isFree(int column, List<TabCell> cells) {
    TabCell cell = column < cells.size() ? cells.get(column) : null;
    return cell == null || cell.kind() == TabCell.Kind.EMPTY && cell.formula().isEmpty();
  }

  private double points(int first, int last, CellStyle style) {
    return points(Arrays.stream(dots, first, last + 1).sum(), style);
  }

  private static double points(double wide, CellStyle style) {
    return Math.max(1, (wide - AIR - INDENTION * style.indent()) * POINTS_A_DOT);
  }
}
