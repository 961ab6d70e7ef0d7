package sheathwright.cutting.sheet;

import java.util.List;

/** Both axes of a task, and the cell of every kind and stock on them. */
final class GuillotineGrid {

  /**
   * Additions that one run over the grid may cost. FineSheetsWork: half the same sheets and bounds,
   * 1.006 of the turns; double one sheet more.
   */
  private static final long MOST_WORK = 20_000_000;

  // FineSheetsWork: half and double the same sheets and bounds in as many turns.
  private static final int MOST_PLACES = 1_200;
  // FineSheetsWork: half the same sheets and bounds; double one sheet more, 1.25 of the turns.
  private static final int COARSE = 250;

  private final GuillotineAxis across;
  private final GuillotineAxis up;
  private final int[] kindX;
  private final int[] kindY;
  private final int[] stockX;
  private final int[] stockY;

  private GuillotineGrid(
      List<SheetTask.Kind> kinds,
      List<SheetTask.Stock> stocks,
      GuillotineAxis across,
      GuillotineAxis up) {
    this.across = across;
    this.up = up;
    long width = width(stocks);
    long height = height(stocks);
    kindX = kinds.stream().mapToInt(kind -> floorIn(across, kind.width(), width)).toArray();
    kindY = kinds.stream().mapToInt(kind -> floorIn(up, kind.height(), height)).toArray();
    stockX = stocks.stream().mapToInt(stock -> across.floor(stock.width())).toArray();
    stockY = stocks.stream().mapToInt(stock -> up.floor(stock.height())).toArray();
  }

  /** The exact grid, or a coarse one where that would be too large. */
  static GuillotineGrid of(List<SheetTask.Kind> kinds, List<SheetTask.Stock> stocks) {
    GuillotineAxis x = across(kinds, stocks, MOST_PLACES);
    GuillotineAxis y = up(kinds, stocks, MOST_PLACES);
    if (work(x, y) > MOST_WORK && x.size() > COARSE) {
      x = across(kinds, stocks, COARSE);
    }
    if (work(x, y) > MOST_WORK && y.size() > COARSE) {
      y = up(kinds, stocks, COARSE);
    }
    return new GuillotineGrid(kinds, stocks, x, y);
  }

  /** A grid of no more places than this along each axis. */
  static GuillotineGrid coarse(List<SheetTask.Kind> kinds, List<SheetTask.Stock> stocks, int most) {
    return new GuillotineGrid(kinds, stocks, across(kinds, stocks, most), up(kinds, stocks, most));
  }

  private static GuillotineAxis across(
      List<SheetTask.Kind> kinds, List<SheetTask.Stock> stocks, int most) {
    long[] widths = kinds.stream().mapToLong(SheetTask.Kind::width).toArray();
    return GuillotineAxis.of(widths, counts(kinds), width(stocks), most);
  }

  private static GuillotineAxis up(
      List<SheetTask.Kind> kinds, List<SheetTask.Stock> stocks, int most) {
    long[] heights = kinds.stream().mapToLong(SheetTask.Kind::height).toArray();
    return GuillotineAxis.of(heights, counts(kinds), height(stocks), most);
  }

  private static int[] counts(List<SheetTask.Kind> kinds) {
    return kinds.stream().mapToInt(SheetTask.Kind::count).toArray();
  }

  private static long width(List<SheetTask.Stock> stocks) {
    return stocks.stream().mapToLong(SheetTask.Stock::width).max().orElseThrow();
  }

  private static long height(List<SheetTask.Stock> stocks) {
    return stocks.stream().mapToLong(SheetTask.Stock::height).max().orElseThrow();
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

  int kinds() {
    return kindX.length;
  }
}
