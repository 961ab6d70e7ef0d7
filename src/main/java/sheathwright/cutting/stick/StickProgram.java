package sheathwright.cutting.stick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Columns;
import sheathwright.cutting.program.LinearProgram;

/**
 * The linear program of patterns: how many sticks of each stock, and how many of them by each
 * pattern, so that every length is cut at least as often as wanted.
 *
 * <p>Rows: one for each length, then one for each stock, which says that no more sticks are cut
 * than bought. The price of a stick stands on the count of its stock.
 */
final class StickProgram {

  final StickProblem problem;
  final LinearProgram simplex;
  final Columns columns = new Columns();
  final List<StickPattern> patterns = new ArrayList<>();
  private final StickBound bound;
  private final Set<StickPattern> known = new HashSet<>();
  private final Map<StickCount, Integer> counts = new LinkedHashMap<>();
  private final List<int[]> countedPatterns = new ArrayList<>();
  private final int firstPattern;
  private final double much;
  private long[] rates = new long[0];
  private long certified;

  /**
   * The program without any pattern: every piece is missing.
   *
   * @param missing what a missing piece of each length costs
   * @param patience ends solutions early
   */
  StickProgram(
      StickProblem problem, StickBound bound, IntToDoubleFunction missing, Patience patience) {
    this.problem = problem;
    this.bound = bound;
    this.much = 2.0 * problem.pieces() + 10;
    int lengths = problem.lengths();
    int rows = lengths + problem.stocks();
    int[] basis = new int[rows];
    for (int k = 0; k < problem.stocks(); k++) {
      basis[lengths + k] = single(lengths + k, 1, problem.price[k], problem.most[k]);
    }
    for (int i = 0; i < lengths; i++) {
      basis[i] = single(i, 1, missing.applyAsDouble(i), 2.0 * problem.demand[i]);
    }
    // What is cut beyond the demand, and sticks bought but not cut.
    for (int row = 0; row < rows; row++) {
      single(row, -1, 0, much * much);
    }
    firstPattern = columns.count();
    int[] rightSide = Arrays.copyOf(problem.demand, rows);
    simplex = new LinearProgram(columns, basis, rightSide, bound.unitCost(), patience);
  }

  private int single(int row, int entry, double cost, double most) {
    return columns.add(new int[] {row}, new int[] {entry}, cost, most);
  }

  /** Column that counts the sticks of a stock. */
  int stockColumn(int stock) {
    return stock;
  }

  /** Column of a pattern. */
  int column(int pattern) {
    return firstPattern + pattern;
  }

  /** Adds a pattern unless it is there; returns whether it was new. */
  boolean add(StickPattern pattern) {
    if (!known.add(pattern)) {
      return false;
    }
    int kinds = pattern.piece().length;
    int[] index = new int[kinds + 1];
    int[] value = new int[kinds + 1];
    System.arraycopy(pattern.piece(), 0, index, 0, kinds);
    System.arraycopy(pattern.count(), 0, value, 0, kinds);
    index[kinds] = problem.lengths() + pattern.stock();
    value[kinds] = -1;
    patterns.add(pattern);
    // More than are worth cutting: this bound must never press on a price.
    columns.add(index, value, 0, pattern.most(problem.demand) + 1);
    return true;
  }

  /** Columns that count patterns, oldest first. */
  IntStream countColumns() {
    return counts.values().stream().mapToInt(Integer::intValue);
  }

  /** Counts the patterns that hold at least so many of two lengths; returns the column. */
  int count(StickCount what) {
    return counts.computeIfAbsent(what, this::newCount);
  }

  private int newCount(StickCount what) {
    int[] counted =
        IntStream.range(0, patterns.size()).filter(p -> what.isIn(patterns.get(p))).toArray();
    countedPatterns.add(counted);
    return simplex.addCount(Arrays.stream(counted).map(this::column).toArray(), much);
  }

  /**
   * A bound in parts, true for these patterns within the bounds that the columns have now, whatever
   * the program's errors are.
   */
  long certified() {
    int stocks = problem.stocks();
    int lengths = problem.lengths();
    long[] worth = bound.worth(simplex.prices());
    long[] worths = patterns.stream().mapToLong(pattern -> pattern.worth(worth)).toArray();
    StickBound.Sum sum = new StickBound.Sum();
    for (int i = 0; i < lengths; i++) {
      sum.add(worth[i], problem.demand[i]);
    }
    int[] count = countColumns().toArray();
    for (int c = 0; c < count.length; c++) {
      long rate = bound.scaled(simplex.prices()[lengths + stocks + c]);
      if (Math.abs(rate) > bound.error()) {
        for (int pattern : countedPatterns.get(c)) {
          worths[pattern] += rate;
        }
        addLeast(sum, rate, count[c]);
      }
    }
    long[] stick = new long[stocks];
    for (int k = 0; k < stocks; k++) {
      stick[k] = Math.max(0, bound.scaled(simplex.prices()[lengths + k]));
    }
    for (int p = 0; p < worths.length; p++) {
      int k = patterns.get(p).stock();
      if (columns.isFreeAbove(column(p))) {
        stick[k] = Math.max(stick[k], worths[p]);
      }
    }
    for (int k = 0; k < stocks; k++) {
      addLeast(sum, bound.parts(problem.price[k]) - stick[k], stockColumn(k));
    }
    rates = worths;
    for (int p = 0; p < worths.length; p++) {
      rates[p] = stick[patterns.get(p).stock()] - worths[p];
      addLeast(sum, rates[p], column(p));
    }
    certified = sum.value();
    return certified;
  }

  /**
   * Adds the columns of patterns that, by the bound just certified, no plan can use even once that
   * costs no more than this, in parts.
   */
  void addUseless(BitSet useless, long highest) {
    for (int p = 0; p < rates.length; p++) {
      if (rates[p] > highest - certified && columns.low(column(p)) == 0) {
        useless.set(column(p));
      }
    }
  }

  private void addLeast(StickBound.Sum sum, long rate, int column) {
    sum.add(rate, (long) (rate >= 0 ? columns.low(column) : columns.high(column)));
  }
}
