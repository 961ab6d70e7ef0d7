package sheathwright.cutting;

import java.util.List;

/** Both axes of a task, and the cell of every kind and stock on them. */
final class GuillotineGrid {

  /** Additions that one run over the grid may cost. */
  private static final long MOST_WORK = 20_000_000;

  private static final int MOST_PLACES = 1_200;
  private static final int COARSE = 250;

  private final GuillotineAxis across;
  private final GuillotineAxis up;
  private final int[] kindX;
  private final int[] kindY;
  private final int[] stockX;
  private final int[] stockY;

  GuillotineGrid(List<SheetTask.Kind> kinds, List<SheetTask.Stock> stocks) {
    long[] widths = kinds.stream().mapToLong(SheetTask.Kind::width).toArray();
    long[] heights = kinds.stream().mapToLong(SheetTask.Kind::height).toArray();
    int[] counts = kinds.stream().mapToInt(SheetTask.Kind::count).toArray();
    long width = stocks.stream().mapToLong(SheetTask.Stock::width).max().orElseThrow();
    long height = stocks.stream().mapToLong(SheetTask.Stock::height).max().orElseThrow();
    GuillotineAxis x = GuillotineAxis.of(widths, counts, width, MOST_PLACES);
    GuillotineAxis y = GuillotineAxis.of(heights, counts, height, MOST_PLACES);
    if (work(x, y) > MOST_WORK && x.size() > COARSE) {
      x = GuillotineAxis.of(widths, counts, width, COARSE);
    }
    if (work(x, y) > MOST_WORK && y.size() > COARSE) {
      y = GuillotineAxis.of(heights, counts, height, COARSE);
    }
    across = x;
    up = y;
    kindX = kinds.stream().mapToInt(kind -> floorIn(across, kind.width(), width)).toArray();
    kindY = kinds.stream().mapToInt(kind -> floorIn(up, kind.height(), height)).toArray();
    stockX = stocks.stream().mapToInt(stock -> across.floor(stock.width())).toArray();
    stockY = stocks.stream().mapToInt(stock -> up.floor(stock.height())).toArray();
  }

  private static int floorIn(GuillotineAxis axis, long length, long longest) {
    return length > longest ? axis.size() : axis.floor(length);
  }

  private static long work(GuillotineAxis x, GuillotineAxis y) {
    return (long) x.size() * y.size() * (x.size() + y.size()) / 4;
  }

  GuillotineAxis across() {
    return across;
  }

  GuillotineAxis up() {
    return up;
  }

  /** Whether the grid is that of the task itself, not a coarse one that holds more. */
  boolean isExact() {
    return across.isExact() && up.isExact();
  }

  int kindX(int kind) {
    return kindX[kind];
  }

  int kindY(int kind) {
    return kindY[kind];
  }

  int stockX(int stock) {
    return stockX[stock];
  }

  int stockY(int stock) {
    return stockY[stock];
  }

  int stocks() {
    return stockX.length;
  }

  int kinds() {
    return kindX.length;
  }
}
