package sheathwright.cutting.program;

import java.util.Arrays;
import sheathwright.cutting.Patience;

/**
 * A linear program that grows: columns are added while it runs, bounds are moved, and it goes on
 * from the basis that it has. Minimizes cost; every row is an equation; every column lies between
 * two finite bounds. Revised simplex: dual steps until the levels lie within the bounds, then
 * primal steps until no column would lower the cost.
 *
 * <p>Works in floating point, and tiny fixed additions to the costs and right sides keep it from
 * going round in circles. Nobody may rely on its numbers: a bound is taken from its prices only
 * after they were made whole numbers and set against every column in whole numbers.
 */
public final class LinearProgram {

  /**
   * Of a usual cost and of one piece: what is added to costs and right sides, and so what of a gain
   * or of a level outside its bounds is nothing. Levels are good to 1e-9 (Basis). StickWork: half
   * and double one proven less of 35, 3 and 4 plans cheaper, 3 and 2 dearer, 0.997 and 1.001 of the
   * turns; sheets are the same.
   */
  static final double ADDITION = 1e-7;

  /**
   * Ratios of numbers about 1 are rounded at 1e-16; those that are one but for that go by the
   * larger pivot. StickWork: half and double the same plans and bounds in as many turns.
   */
  private static final double SAME_RATIO = 1e-12;

  // StickWork: half and double give the same plans and bounds, 1.000 and 1.003 of the turns; a
  // patience that counts questions is counted by it.
  private static final int STEPS_BETWEEN_LOOKS = 32;
  // Ends a walk in circles: of sticks the most seen was 12 a row, of sheets 4 (0.2 to 0.5 s a
  // list).
  private static final int MOST_STEPS_A_ROW = 500;

  private final Columns columns;
  private double[] prices;
  private final Basis basis;
  private final Patience patience;
  private final double costError;
  private double[] cost = new double[0];
  private double[] reduced = new double[0];
  private int costed;
  private boolean optimal;

  /**
   * A program that starts from one column for each row, which has a single entry, in that row.
   *
   * @param rightSide of each equation
   * @param unitCost the size of a usual cost, above 0; errors are measured by it
   * @param patience ends a solution early
   */
  public LinearProgram(
      Columns columns, int[] basis, int[] rightSide, double unitCost, Patience patience) {
    this.columns = columns;
    this.patience = patience;
    this.costError = ADDITION * unitCost;
    this.prices = new double[rightSide.length];
    double[] side = new double[rightSide.length];
    for (int row = 0; row < side.length; row++) {
      side[row] = rightSide[row] + (rightSide[row] == 0 ? 0 : ADDITION * addition(row));
    }
    this.basis = new Basis(columns, basis, side);
  }

  /** A number from 1 to 2 that looks like chance and is always the same. */
  private static double addition(int key) {
    int mixed = (key + 1) * 0x9E3779B9;
    mixed ^= mixed >>> 15;
    return 1 + (mixed & 0xFFFF) / 65536.0;
  }

  /**
   * Adds a row that counts some columns, and the column that holds the count.
   *
   * @return the number of the counting column
   */
  public int addCount(int[] counted, double most) {
    int row = prices.length;
    for (int column : counted) {
      columns.extend(column, row);
    }
    int count = columns.add(new int[] {row}, new int[] {-1}, 0, most);
    prices = Arrays.copyOf(prices, row + 1);
    basis.addRow(counted, count);
    return count;
  }

  /** Price of each row: what one more on its right side would cost. */
  public double[] prices() {
    return prices.clone();
  }

  /** Level of a column. */
  public double level(int column) {
    return columns.isBasic(column) ? basis.level[columns.rowOf[column]] : columns.rest(column);
  }

  /** Whether the last solution ended at the optimum. */
  public boolean isOptimal() {
    return optimal;
  }

  /** Cost of the present levels. */
  public double cost() {
    double sum = 0;
    for (int column = 0; column < columns.count; column++) {
      sum += columns.cost[column] == 0 ? 0 : columns.cost[column] * level(column);
    }
    return sum;
  }

  /** Finds the least cost from where it stands, but stops as soon as it is likely above this. */
  public void solve(double enough) {
    solve(enough, mostSteps());
  }

  /**
   * Finds the least cost from where it stands. Whether or not it comes to the end, the prices prove
   * what they prove.
   *
   * @param enough stops as soon as the cost is likely to be above this
   * @param mostSteps stops after so many steps
   */
  public void solve(double enough, int mostSteps) {
    price();
    for (int column = 0; column < columns.count; column++) {
      if (!columns.isBasic(column)) {
        columns.atHigh[column] =
            reduced[column] < -costError || columns.atHigh[column] && reduced[column] <= costError;
      }
    }
    basis.refresh();
    optimal = false;
    int left = dual(enough, mostSteps);
    if (left > 0) {
      primal(left);
    }
  }

  /** Primal steps from levels that lie within their bounds. */
  public void primal() {
    primal(mostSteps());
  }

  private int mostSteps() {
    return MOST_STEPS_A_ROW * (prices.length + 20);
  }

  private void primal(int mostSteps) {
    optimal = false;
    for (int step = 0; step < mostSteps && !isTired(step); step++) {
      price();
      int entering = -1;
      double best = costError;
      for (int column = 0; column < columns.count; column++) {
        if (!columns.isBasic(column) && columns.low[column] < columns.high[column]) {
          double gain = columns.atHigh[column] ? reduced[column] : -reduced[column];
          if (gain > best) {
            best = gain;
            entering = column;
          }
        }
      }
      if (entering < 0) {
        optimal = true;
        return;
      }
      primalStep(entering);
    }
  }

  private boolean isTired(int step) {
    return step % STEPS_BETWEEN_LOOKS == 0 && patience.isSpent();
  }

  private void primalStep(int entering) {
    double[] change = basis.column(entering);
    double direction = columns.atHigh[entering] ? -1 : 1;
    double most = columns.high[entering] - columns.low[entering];
    int leaving = -1;
    double pivot = 0;
    for (int row = 0; row < change.length; row++) {
      double fall = direction * change[row];
      double size = Math.abs(fall);
      if (size > Basis.LEAST_PIVOT) {
        int column = basis.basic[row];
        double level = basis.level[row];
        double room = fall > 0 ? level - columns.low[column] : columns.high[column] - level;
        double limit = Math.max(0, room) / size;
        if (limit < most - SAME_RATIO || limit < most + SAME_RATIO && size > pivot) {
          most = limit;
          leaving = row;
          pivot = size;
        }
      }
    }
    double move = direction * most;
    basis.move(change, move);
    if (leaving < 0) {
      columns.atHigh[entering] = !columns.atHigh[entering];
    } else {
      double newLevel = columns.rest(entering) + move;
      basis.exchange(leaving, entering, change, newLevel, direction * change[leaving] < 0);
    }
  }

  /** Dual steps until all levels lie within their bounds; returns how many steps are left then. */
  private int dual(double enough, int mostSteps) {
    for (int left = mostSteps; left > 0 && !isTired(left); left--) {
      price();
      int row = farthestOutside();
      if (row < 0) {
        return left;
      }
      if (cost() > enough) {
        return 0;
      }
      int leaving = basis.basic[row];
      boolean leavesHigh = basis.level[row] > columns.high[leaving];
      int entering = entering(basis.inverse[row], leavesHigh ? 1 : -1);
      double bound = leavesHigh ? columns.high[leaving] : columns.low[leaving];
      double outside = basis.level[row] - bound;
      if (entering < 0) {
        raisePrices(row, outside, Double.isInfinite(enough) ? 0 : Math.abs(enough));
        return 0;
      }
      double[] change = basis.column(entering);
      double move = outside / change[row];
      basis.move(change, move);
      basis.exchange(row, entering, change, columns.rest(entering) + move, leavesHigh);
    }
    return 0;
  }

  private int farthestOutside() {
    int farthest = -1;
    double worst = ADDITION;
    for (int row = 0; row < basis.level.length; row++) {
      int column = basis.basic[row];
      double level = basis.level[row];
      double outside = Math.max(columns.low[column] - level, level - columns.high[column]);
      if (outside > worst) {
        worst = outside;
        farthest = row;
      }
    }
    return farthest;
  }

  /** The levels are impossible: along this row the prices may rise without end. */
  private void raisePrices(int row, double outside, double enough) {
    double far = (4 * enough + 1e10 * costError) / outside;
    for (int i = 0; i < prices.length; i++) {
      prices[i] -= far * basis.inverse[row][i];
    }
  }

  private int entering(double[] row, int sign) {
    int entering = -1;
    double least = Double.POSITIVE_INFINITY;
    double pivot = 0;
    for (int column = 0; column < columns.count; column++) {
      if (columns.isBasic(column) || columns.low[column] == columns.high[column]) {
        continue;
      }
      boolean atHigh = columns.atHigh[column];
      double entry = sign * columns.dot(row, column);
      if (atHigh ? entry > -Basis.LEAST_PIVOT : entry < Basis.LEAST_PIVOT) {
        continue;
      }
      double size = Math.abs(entry);
      double ratio = Math.max(0, atHigh ? -reduced[column] : reduced[column]) / size;
      if (ratio < least - SAME_RATIO || ratio <= least + SAME_RATIO && size > pivot) {
        least = ratio;
        pivot = size;
        entering = column;
      }
    }
    return entering;
  }

  /** Prices of the rows, and what each column costs beyond what the rows pay for it. */
  private void price() {
    addToCosts();
    Arrays.fill(prices, 0);
    for (int row = 0; row < prices.length; row++) {
      double rate = cost[basis.basic[row]];
      double[] from = basis.inverse[row];
      for (int i = 0; i < prices.length; i++) {
        prices[i] += rate * from[i];
      }
    }
    for (int column = 0; column < columns.count; column++) {
      boolean canMove = !columns.isBasic(column) && columns.low[column] < columns.high[column];
      reduced[column] = canMove ? cost[column] - columns.dot(prices, column) : 0;
    }
  }

  private void addToCosts() {
    if (cost.length < columns.count) {
      cost = Arrays.copyOf(cost, 2 * columns.count);
      reduced = new double[cost.length];
    }
    for (; costed < columns.count; costed++) {
      cost[costed] = columns.cost[costed] + costError * addition(costed * 31 + 7);
    }
  }
}
