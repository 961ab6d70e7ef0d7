package sheathwright.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/**
 * The linear program of patterns: how many sticks of each stock, and how many of them by each
 * pattern, so that every length is cut at least as often as wanted.
 *
 * <p>Rows: one for each length, then one for each stock, which says that no more sticks are cut
 * than bought. The price of a stick stands on the count of its stock.
 */
final class StickProgram {

  final StickProblem problem;
  final StickSimplex simplex;
  final StickBound bound;
  final List<StickPattern> patterns = new ArrayList<>();
  private final Map<StickPattern, Integer> columns = new HashMap<>();
  private final int firstPattern;

  StickProgram(StickProblem problem, StickBound bound, IntToDoubleFunction missing) {
    this.problem = problem;
    this.bound = bound;
    int lengths = problem.lengths();
    int stocks = problem.stocks();
    long[] rightSide = new long[lengths + stocks];
    for (int i = 0; i < lengths; i++) {
      rightSide[i] = problem.demand[i];
    }
    simplex = new StickSimplex(rightSide, bound.unitCost());
    int[] basis = new int[lengths + stocks];
    double much = 2.0 * problem.pieces() + 10;
    for (int k = 0; k < stocks; k++) {
      basis[lengths + k] = single(lengths + k, 1, problem.price[k], problem.most[k]);
    }
    for (int i = 0; i < lengths; i++) {
      basis[i] = single(i, 1, missing.applyAsDouble(i), 2.0 * problem.demand[i]);
    }
    for (int i = 0; i < lengths; i++) {
      single(i, -1, 0, much * problem.pieces());
    }
    for (int k = 0; k < stocks; k++) {
      single(lengths + k, -1, 0, much);
    }
    firstPattern = simplex.columns;
    simplex.start(basis);
  }

  private int single(int row, int entry, double cost, double most) {
    return simplex.add(new int[] {row}, new int[] {entry}, cost, 0, most);
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
    if (columns.putIfAbsent(pattern, patterns.size()) != null) {
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
    simplex.add(index, value, 0, 0, most(pattern));
    return true;
  }

  /** More sticks than are worth cutting by a pattern: this bound must never press on a price. */
  int most(StickPattern pattern) {
    return pattern.most(problem.demand) + 1;
  }

  /**
   * A bound in parts, true for these patterns within the bounds that the columns have now, whatever
   * the program's errors are.
   */
  long certified() {
    long[] worth = bound.worth(simplex.prices);
    int stocks = problem.stocks();
    long[] stick = new long[stocks];
    for (int k = 0; k < stocks; k++) {
      stick[k] = bound.clamped(simplex.prices[problem.lengths() + k]);
    }
    int count = patterns.size();
    long[] worths = new long[count];
    for (int p = 0; p < count; p++) {
      StickPattern pattern = patterns.get(p);
      worths[p] = pattern.worth(worth);
      int column = column(p);
      if (simplex.high[column] >= most(pattern)) {
        stick[pattern.stock()] = Math.max(stick[pattern.stock()], worths[p]);
      }
    }
    StickBound.Sum sum = new StickBound.Sum();
    for (int i = 0; i < worth.length; i++) {
      sum.add(worth[i], problem.demand[i]);
    }
    for (int k = 0; k < stocks; k++) {
      int column = stockColumn(k);
      long rate = bound.parts(problem.price[k]) - stick[k];
      sum.add(rate, (long) (rate >= 0 ? simplex.low[column] : simplex.high[column]));
    }
    for (int p = 0; p < count; p++) {
      int column = column(p);
      long rate = stick[patterns.get(p).stock()] - worths[p];
      sum.add(rate, (long) (rate >= 0 ? simplex.low[column] : simplex.high[column]));
    }
    return sum.value();
  }
}
