package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.CoveringProgram;

/**
 * The linear program over a given list of patterns and what is still wanted, with a bound in whole
 * numbers and how far each pattern is taken.
 */
final class PatternPrices {

  /** In the prices' unit. */
  private static final long SMALLEST_GAIN =
      (long) (CoveringProgram.SMALLEST_GAIN * GuillotineBound.SCALE);

  private final int[] wanted;
  private final List<SheetPattern> patterns;
  private final int[] supply;
  private final List<Integer> columnPatterns = new ArrayList<>();
  private final boolean[] isColumn;
  private final CoveringProgram program;
  private final int[] rowOfKind;
  private final int rows;
  private final long[] worth;
  private final long[] price;

  /**
   * @param wanted of each kind still
   * @param supply of each stock still; that of new sheets does not matter
   * @param sheets that may be bought: prices that show it to be too few are good enough
   * @param start a mix to start from: how much of each pattern
   */
  PatternPrices(
      int[] wanted,
      int[] supply,
      int sheets,
      List<SheetPattern> patterns,
      double[] start,
      Patience patience) {
    this.wanted = wanted;
    this.patterns = patterns;
    this.supply = supply;
    isColumn = new boolean[patterns.size()];
    rowOfKind = new int[wanted.length];
    int row = 0;
    for (int kind = 0; kind < wanted.length; kind++) {
      rowOfKind[kind] = wanted[kind] > 0 ? row++ : -1;
    }
    rows = row;
    int[] demand = new int[rows + supply.length - 1];
    for (int kind = 0; kind < wanted.length; kind++) {
      if (wanted[kind] > 0) {
        demand[rowOfKind[kind]] = wanted[kind];
      }
    }
    for (int stock = 1; stock < supply.length; stock++) {
      demand[rows + stock - 1] = -supply[stock];
    }
    program = new CoveringProgram(demand, 2, patience);
    worth = new long[wanted.length];
    price = new long[supply.length];
    for (int index = 0; index < start.length; index++) {
      if (start[index] > 0) {
        add(index);
      }
    }
    solve(sheets, patience);
  }

  private void solve(int sheets, Patience patience) {
    boolean isOpen = true;
    while (isOpen) {
      boolean solved = program.solve();
      double[] prices = program.prices();
      for (int kind = 0; kind < wanted.length; kind++) {
        worth[kind] = wanted[kind] > 0 ? rounded(prices[rowOfKind[kind]]) : 0;
      }
      long[] brought = patterns.stream().mapToLong(this::worth).toArray();
      Arrays.fill(price, 0);
      for (int index = 0; index < brought.length; index++) {
        int stock = patterns.get(index).stock();
        price[stock] = Math.max(price[stock], brought[index]);
      }
      boolean isTooFew = waste(sheets, wanted, supply, worth, price) < 0;
      isOpen = solved && !isTooFew && !patience.isSpent() && addColumns(prices, brought);
    }
  }

  private static long rounded(double price) {
    return Math.min(
        GuillotineBound.HIGHEST_PRICE, (long) (Math.max(0, price) * GuillotineBound.SCALE));
  }

  /** Adds the best patterns for each kind; false if no pattern would lower the cost. */
  private boolean addColumns(double[] prices, long[] brought) {
    int[] best = new int[wanted.length];
    long[] most = new long[wanted.length];
    Arrays.fill(best, -1);
    Arrays.fill(most, SMALLEST_GAIN);
    for (int index = 0; index < isColumn.length; index++) {
      SheetPattern pattern = patterns.get(index);
      double cost = pattern.stock() == SheetTask.NEW ? 1 : prices[rows + pattern.stock() - 1];
      long gain = brought[index] - (long) (cost * GuillotineBound.SCALE);
      if (gain > SMALLEST_GAIN && !isColumn[index]) {
        for (int kind : pattern.block().kinds()) {
          if (wanted[kind] > 0 && gain > most[kind]) {
            most[kind] = gain;
            best[kind] = index;
          }
        }
      }
    }
    boolean added = false;
    for (int index : best) {
      if (index >= 0 && !isColumn[index]) {
        add(index);
        added = true;
      }
    }
    return added;
  }

  private void add(int index) {
    SheetPattern pattern = patterns.get(index);
    int[] counts = new int[rows];
    for (int kind : pattern.block().kinds()) {
      if (rowOfKind[kind] >= 0 && counts[rowOfKind[kind]] < wanted[kind]) {
        counts[rowOfKind[kind]]++;
      }
    }
    boolean isNew = pattern.stock() == SheetTask.NEW;
    program.add(isNew ? 1 : 0, counts, isNew ? -1 : rows + pattern.stock() - 1);
    columnPatterns.add(index);
    isColumn[index] = true;
  }

  /** What a pattern brings of what is still wanted. */
  private long worth(SheetPattern pattern) {
    return worth(pattern, worth, wanted);
  }

  static long worth(SheetPattern pattern, long[] worth, int[] wanted) {
    long sum = 0;
    int run = 0;
    int last = -1;
    for (int kind : pattern.block().kinds()) {
      run = kind == last ? run + 1 : 1;
      last = kind;
      if (run <= wanted[kind]) {
        sum += worth[kind];
      }
    }
    return sum;
  }

  /** Whole prices of the kinds. */
  long[] worth() {
    return worth;
  }

  /** The most that a pattern of each stock brings. */
  long[] price() {
    return price;
  }

  /**
   * What may be wasted when so many new sheets are bought, in the prices' unit; when it is negative
   * these patterns cannot do it.
   */
  static long waste(int sheets, int[] wanted, int[] supply, long[] worth, long[] price) {
    long waste = sheets * price[SheetTask.NEW];
    for (int stock = 1; stock < supply.length; stock++) {
      waste += supply[stock] * price[stock];
    }
    for (int kind = 0; kind < wanted.length; kind++) {
      waste -= wanted[kind] * worth[kind];
    }
    return waste;
  }

  /** How much of each pattern the best fractional mix takes. */
  double[] amounts() {
    double[] amounts = new double[patterns.size()];
    double[] taken = program.amounts();
    for (int column = 0; column < taken.length; column++) {
      amounts[columnPatterns.get(column)] = taken[column];
    }
    return amounts;
  }
}
