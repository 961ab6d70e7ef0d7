package sheathwright.cutting.sheet;

import java.util.Arrays;

/**
 * The most that pieces of given worth can bring out of every cell of a grid by guillotine cuts of
 * any number of stages, when copies of a piece are not limited (Beasley 1985, from memory). Whole
 * numbers, so the answer is exact; on a coarse grid it is never too small.
 */
final class GuillotineValues {

  /** Above any worth, and a worth can be taken from it. */
  private static final long NEVER = Long.MAX_VALUE / 4;

  private final GuillotineGrid grid;
  private final GuillotineAxis across;
  private final GuillotineAxis up;
  private final long[] worth;
  private final long[][] most;
  private final long[][] needed;
  private long[] asked = new long[0];

  GuillotineValues(GuillotineGrid grid) {
    this.grid = grid;
    across = grid.across();
    up = grid.up();
    worth = new long[grid.kinds()];
    most = new long[across.size()][up.size()];
    needed = new long[across.size()][up.size()];
  }

  /**
   * Finds the most for every cell.
   *
   * @param worthOfKind 0 or more for each kind; their sum over one sheet must stay below 2^60
   */
  void setWorth(long[] worthOfKind) {
    for (long[] row : most) {
      Arrays.fill(row, 0);
    }
    for (int kind = 0; kind < worth.length; kind++) {
      worth[kind] = 0;
      if (isOnGrid(kind)) {
        int x = grid.kindX(kind);
        int y = grid.kindY(kind);
        worth[kind] = worthOfKind[kind];
        most[x][y] = Math.max(most[x][y], worth[kind]);
      }
    }
    for (int x = 1; x < across.size(); x++) {
      fillRow(x);
    }
  }

  private void fillRow(int x) {
    long[] row = most[x];
    raise(row, most[x - 1], most[0]);
    for (int left = 1; left <= across.half(x); left++) {
      raise(row, most[left], most[across.rest(x, left)]);
    }
    for (int y = 1; y < row.length; y++) {
      long best = Math.max(row[y], row[y - 1]);
      for (int below = 1; below <= up.half(y); below++) {
        best = Math.max(best, row[below] + row[up.rest(y, below)]);
      }
      row[y] = best;
    }
  }

  private static void raise(long[] row, long[] left, long[] right) {
    for (int y = 0; y < row.length; y++) {
      row[y] = Math.max(row[y], left[y] + right[y]);
    }
  }

  long worth(int kind) {
    return worth[kind];
  }

  /** The most that a whole stock can bring. */
  long most(int stock) {
    return most[grid.stockX(stock)][grid.stockY(stock)];
  }

  /** Counts of each kind in a pattern that brings the most out of a stock. */
  int[] bestPattern(int stock) {
    int[] counts = new int[worth.length];
    collect(grid.stockX(stock), grid.stockY(stock), counts);
    return counts;
  }

  private void collect(int x, int y, int[] counts) {
    long value = most[x][y];
    if (value == 0) {
      return;
    }
    int column = x;
    while (most[column - 1][y] == value) {
      column--;
    }
    int row = y;
    while (most[column][row - 1] == value) {
      row--;
    }
    for (int kind = 0; kind < worth.length; kind++) {
      if (grid.kindX(kind) == column && grid.kindY(kind) == row && worth[kind] == value) {
        counts[kind]++;
        return;
      }
    }
    for (int left = 1; left <= across.half(column); left++) {
      int right = across.rest(column, left);
      if (most[left][row] + most[right][row] == value) {
        collect(left, row, counts);
        collect(right, row, counts);
        return;
      }
    }
    for (int below = 1; below <= up.half(row); below++) {
      int above = up.rest(row, below);
      if (most[column][below] + most[column][above] == value) {
        collect(column, below, counts);
        collect(column, above, counts);
        return;
      }
    }
    throw new IllegalStateException("a value without a pattern");
  }

  /**
   * Finds for every cell what a block of that size must be worth, so that some stock with it in can
   * bring what is asked of it.
   *
   * @param askedOfStock the least that a pattern of each stock must bring
   */
  void ask(long[] askedOfStock) {
    asked = askedOfStock.clone();
    for (long[] row : needed) {
      Arrays.fill(row, NEVER);
    }
    for (int stock = 0; stock < asked.length; stock++) {
      long[] row = needed[grid.stockX(stock)];
      row[grid.stockY(stock)] = Math.min(row[grid.stockY(stock)], asked[stock]);
    }
    for (int x = across.size() - 1; x >= 0; x--) {
      fillNeeded(x);
    }
  }

  private void fillNeeded(int x) {
    long[] row = needed[x];
    if (x + 1 < across.size()) {
      lower(row, needed[x + 1], most[0]);
    }
    for (int beside = 1; beside < across.size(); beside++) {
      int both = across.sum(x, beside);
      if (both > x) {
        lower(row, needed[both], most[beside]);
      }
    }
    for (int y = row.length - 2; y >= 0; y--) {
      long least = Math.min(row[y], row[y + 1]);
      for (int above = 1; above < row.length - y; above++) {
        int both = up.sum(y, above);
        if (both > y) {
          least = Math.min(least, row[both] - most[x][above]);
        }
      }
      row[y] = least;
    }
  }

  private static void lower(long[] row, long[] whole, long[] beside) {
    for (int y = 0; y < row.length; y++) {
      row[y] = Math.min(row[y], whole[y] - beside[y]);
    }
  }

  /** What a block of this cell must be worth. */
  long needed(int x, int y) {
    return needed[x][y];
  }

  /** Whether a kind has a cell; one that is too large or too small for a coarse grid has none. */
  boolean isOnGrid(int kind) {
    int x = grid.kindX(kind);
    int y = grid.kindY(kind);
    return x > 0 && y > 0 && x < across.size() && y < up.size();
  }

  /**
   * The pattern with this kind, which must be on the grid, that beats most what is asked.
   *
   * @param counts of each kind, filled
   * @return the stock that it is cut out of
   */
  int patternWith(int kind, int[] counts) {
    counts[kind]++;
    int x = grid.kindX(kind);
    int y = grid.kindY(kind);
    while (true) {
      long least = needed[x][y];
      for (int stock = 0; stock < asked.length; stock++) {
        if (grid.stockX(stock) == x && grid.stockY(stock) == y && asked[stock] == least) {
          return stock;
        }
      }
      if (x + 1 < across.size() && needed[x + 1][y] == least) {
        x++;
      } else if (y + 1 < up.size() && needed[x][y + 1] == least) {
        y++;
      } else {
        int wider = wider(x, y, least, counts);
        if (wider > x) {
          x = wider;
        } else {
          y = higher(x, y, least, counts);
        }
      }
    }
  }

  private int wider(int x, int y, long least, int[] counts) {
    for (int beside = 1; beside < across.size(); beside++) {
      int both = across.sum(x, beside);
      if (both > x && needed[both][y] - most[beside][y] == least) {
        collect(beside, y, counts);
        return both;
      }
    }
    return x;
  }

  private int higher(int x, int y, long least, int[] counts) {
    for (int above = 1; above < up.size(); above++) {
      int both = up.sum(y, above);
      if (both > y && needed[x][both] - most[x][above] == least) {
        collect(x, above, counts);
        return both;
      }
    }
    throw new IllegalStateException("a need without a stock");
  }
}
