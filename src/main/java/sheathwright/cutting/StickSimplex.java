package sheathwright.cutting;

import java.util.Arrays;

/**
 * A linear program that grows: columns are added while it runs, bounds are moved, and it goes on
 * from the basis that it has. Minimises cost; every row is an equation; every column lies between
 * two finite bounds. Revised simplex with a dense inverse: dual steps until the levels lie within
 * the bounds, then primal steps until no column would lower the cost.
 *
 * <p>Works in floating point, and tiny fixed additions to the costs and right sides keep it from
 * going round in circles. Nobody may rely on its numbers: {@link StickBound} makes a true bound of
 * its prices.
 */
final class StickSimplex {

  private static final double LEVEL_ERROR = 1e-7;
  private static final double PIVOT_ERROR = 1e-8;
  private static final int STEPS_BETWEEN_CHECKS = 30;

  final int rows;
  final long[] rightSide;
  int columns;
  int[][] index = new int[256][];
  int[][] value = new int[256][];
  double[] cost = new double[256];
  double[] low = new double[256];
  double[] high = new double[256];

  /** Price of each row: what one more on its right side would cost. */
  final double[] prices;

  private final double costError;
  private final double[] side;
  private double[] shifted = new double[256];
  private double[] reduced = new double[256];
  private boolean[] atHigh = new boolean[256];
  private int[] rowOf = new int[256];
  private final int[] basic;
  private final double[] level;
  private double[][] inverse;
  private int steps;
  private int[] firstBasis;

  /**
   * An empty program.
   *
   * @param rightSide of each equation
   * @param unitCost the size of a usual cost, above 0; errors are measured by it
   */
  StickSimplex(long[] rightSide, double unitCost) {
    this.rows = rightSide.length;
    this.rightSide = rightSide;
    this.costError = 1e-7 * unitCost;
    this.prices = new double[rows];
    this.side = new double[rows];
    for (int row = 0; row < rows; row++) {
      side[row] = rightSide[row] + (rightSide[row] == 0 ? 0 : 1e-7 * noise(row));
    }
    this.basic = new int[rows];
    this.level = new double[rows];
  }

  /** A number in 1..2 that looks like chance and is always the same. */
  private static double noise(int key) {
    int mixed = (key + 1) * 0x9E3779B9;
    mixed ^= mixed >>> 15;
    return 1 + (mixed & 0xFFFF) / 65536.0;
  }

  /** Adds a column at its low bound and returns its number. */
  int add(int[] rowIndex, int[] rowValue, double columnCost, double least, double most) {
    if (columns == cost.length) {
      grow();
    }
    int column = columns++;
    index[column] = rowIndex;
    value[column] = rowValue;
    cost[column] = columnCost;
    shifted[column] = columnCost + costError * noise(column * 31 + 7);
    low[column] = least;
    high[column] = most;
    rowOf[column] = -1;
    return column;
  }

  private void grow() {
    int size = 2 * columns;
    index = Arrays.copyOf(index, size);
    value = Arrays.copyOf(value, size);
    cost = Arrays.copyOf(cost, size);
    low = Arrays.copyOf(low, size);
    high = Arrays.copyOf(high, size);
    shifted = Arrays.copyOf(shifted, size);
    reduced = Arrays.copyOf(reduced, size);
    atHigh = Arrays.copyOf(atHigh, size);
    rowOf = Arrays.copyOf(rowOf, size);
  }

  /** Starts from one column for each row, each with a single entry, in that row. */
  void start(int[] columnOfRow) {
    firstBasis = columnOfRow.clone();
    System.arraycopy(columnOfRow, 0, basic, 0, rows);
    inverse = new double[rows][rows];
    invert();
    refresh();
  }

  /** Level of a column. */
  double level(int column) {
    return rowOf[column] >= 0 ? level[rowOf[column]] : rest(column);
  }

  private double rest(int column) {
    return atHigh[column] ? high[column] : low[column];
  }

  /** Cost of a column less what its rows pay for it. */
  double reduced(int column) {
    return reduced[column];
  }

  /** Cost of the present levels. */
  double cost() {
    double sum = 0;
    for (int column = 0; column < columns; column++) {
      sum += cost[column] == 0 ? 0 : cost[column] * level(column);
    }
    return sum;
  }

  /**
   * Finds the least cost from where it stands.
   *
   * @param enough stops as soon as the cost is sure to be above this
   * @param mostSteps stops after so many steps
   * @return whether it came to an end, be it the optimum, above {@code enough}, or impossible; in
   *     all three the prices prove it
   */
  boolean solve(double enough, int mostSteps) {
    steps = 0;
    price();
    for (int column = 0; column < columns; column++) {
      if (rowOf[column] < 0) {
        atHigh[column] =
            reduced[column] < -costError || atHigh[column] && reduced[column] <= costError;
      }
    }
    refresh();
    int left = dual(enough, mostSteps);
    return left == 0 || left > 0 && primal(left);
  }

  /** Primal steps; the levels lie within their bounds already. */
  boolean primal(int mostSteps) {
    for (int i = 0; i < mostSteps; i++) {
      price();
      int entering = -1;
      double best = costError;
      for (int column = 0; column < columns; column++) {
        if (rowOf[column] < 0 && low[column] < high[column]) {
          double gain = atHigh[column] ? reduced[column] : -reduced[column];
          if (gain > best) {
            best = gain;
            entering = column;
          }
        }
      }
      if (entering < 0) {
        return true;
      }
      primalStep(entering);
    }
    return false;
  }

  private void primalStep(int entering) {
    double[] change = column(entering);
    double direction = atHigh[entering] ? -1 : 1;
    double most = high[entering] - low[entering];
    int leaving = -1;
    double pivot = 0;
    for (int row = 0; row < rows; row++) {
      double fall = direction * change[row];
      if (Math.abs(fall) > PIVOT_ERROR) {
        int column = basic[row];
        double room = fall > 0 ? level[row] - low[column] : high[column] - level[row];
        double limit = Math.max(0, room) / Math.abs(fall);
        if (limit < most - 1e-12 || limit < most + 1e-12 && Math.abs(fall) > pivot) {
          most = limit;
          leaving = row;
          pivot = Math.abs(fall);
        }
      }
    }
    double move = direction * most;
    for (int row = 0; row < rows; row++) {
      level[row] -= move * change[row];
    }
    if (leaving < 0) {
      atHigh[entering] = !atHigh[entering];
    } else {
      boolean leavesHigh = direction * change[leaving] < 0;
      exchange(leaving, entering, change, rest(entering) + move, leavesHigh);
    }
  }

  /** Dual steps; returns how many steps are left, 0 when the prices prove enough, −1 when lost. */
  private int dual(double enough, int mostSteps) {
    for (int left = mostSteps; left > 0; left--) {
      price();
      int leaving = -1;
      double worst = LEVEL_ERROR;
      for (int row = 0; row < rows; row++) {
        double outside = Math.max(low[basic[row]] - level[row], level[row] - high[basic[row]]);
        if (outside > worst) {
          worst = outside;
          leaving = row;
        }
      }
      if (leaving < 0) {
        return left;
      }
      if (cost() > enough) {
        return 0;
      }
      boolean leavesHigh = level[leaving] > high[basic[leaving]];
      int entering = entering(inverse[leaving], leavesHigh ? 1 : -1);
      if (entering < 0) {
        // Impossible: along this row the prices can rise without end.
        double far = 4 * Math.abs(enough) / worst + 1;
        for (int row = 0; row < rows; row++) {
          prices[row] += (leavesHigh ? -far : far) * inverse[leaving][row];
        }
        return 0;
      }
      double[] change = column(entering);
      double bound = leavesHigh ? high[basic[leaving]] : low[basic[leaving]];
      double move = (level[leaving] - bound) / change[leaving];
      for (int row = 0; row < rows; row++) {
        level[row] -= move * change[row];
      }
      exchange(leaving, entering, change, rest(entering) + move, leavesHigh);
    }
    return -1;
  }

  private int entering(double[] row, int sign) {
    int entering = -1;
    double least = Double.POSITIVE_INFINITY;
    double pivot = 0;
    for (int column = 0; column < columns; column++) {
      if (rowOf[column] >= 0 || low[column] == high[column]) {
        continue;
      }
      double entry = sign * dot(row, column);
      if (atHigh[column] ? entry > -PIVOT_ERROR : entry < PIVOT_ERROR) {
        continue;
      }
      double size = Math.abs(entry);
      double ratio = Math.max(0, atHigh[column] ? -reduced[column] : reduced[column]) / size;
      if (ratio < least - 1e-12 || ratio <= least + 1e-12 && size > pivot) {
        least = ratio;
        pivot = size;
        entering = column;
      }
    }
    return entering;
  }

  private double dot(double[] row, int column) {
    double sum = 0;
    int[] rowIndex = index[column];
    int[] rowValue = value[column];
    for (int i = 0; i < rowIndex.length; i++) {
      sum += row[rowIndex[i]] * rowValue[i];
    }
    return sum;
  }

  private double[] column(int column) {
    double[] change = new double[rows];
    for (int row = 0; row < rows; row++) {
      change[row] = dot(inverse[row], column);
    }
    return change;
  }

  private void exchange(
      int leaving, int entering, double[] change, double newLevel, boolean leavesHigh) {
    int left = basic[leaving];
    rowOf[left] = -1;
    atHigh[left] = leavesHigh;
    basic[leaving] = entering;
    rowOf[entering] = leaving;
    level[leaving] = newLevel;
    eliminate(inverse, leaving, change);
    if (++steps % STEPS_BETWEEN_CHECKS == 0) {
      refresh();
    }
  }

  private static void eliminate(double[][] inverse, int leaving, double[] change) {
    double[] pivotRow = inverse[leaving];
    int rows = pivotRow.length;
    double factor = 1 / change[leaving];
    for (int i = 0; i < rows; i++) {
      pivotRow[i] *= factor;
    }
    for (int row = 0; row < rows; row++) {
      double times = change[row];
      if (row != leaving && times != 0) {
        double[] target = inverse[row];
        for (int i = 0; i < rows; i++) {
          target[i] -= times * pivotRow[i];
        }
      }
    }
  }

  private void price() {
    Arrays.fill(prices, 0);
    for (int row = 0; row < rows; row++) {
      double rate = shifted[basic[row]];
      double[] from = inverse[row];
      for (int i = 0; i < rows; i++) {
        prices[i] += rate * from[i];
      }
    }
    for (int column = 0; column < columns; column++) {
      reduced[column] = rowOf[column] >= 0 ? 0 : shifted[column] - dot(prices, column);
    }
  }

  /** Levels afresh; the inverse too where it has drifted. */
  private void refresh() {
    double[] rest = rest();
    multiply(rest);
    if (drift(rest) > 1e-9) {
      invert();
      multiply(rest());
    }
  }

  /** Right sides less what the resting columns take. */
  private double[] rest() {
    double[] rest = side.clone();
    for (int column = 0; column < columns; column++) {
      if (rowOf[column] < 0) {
        take(rest, column, rest(column));
      }
    }
    return rest;
  }

  private void take(double[] from, int column, double times) {
    if (times != 0) {
      for (int i = 0; i < index[column].length; i++) {
        from[index[column][i]] -= times * value[column][i];
      }
    }
  }

  private void multiply(double[] rest) {
    for (int row = 0; row < rows; row++) {
      double sum = 0;
      for (int i = 0; i < rows; i++) {
        sum += inverse[row][i] * rest[i];
      }
      level[row] = sum;
    }
  }

  private double drift(double[] rest) {
    double[] left = rest.clone();
    for (int row = 0; row < rows; row++) {
      take(left, basic[row], level[row]);
    }
    return Arrays.stream(left).map(Math::abs).max().orElse(0);
  }

  private void invert() {
    if (!invert(basic.clone())) {
      invert(firstBasis);
    }
  }

  /** Columns with one entry first, then each column into the free row where it is largest. */
  private boolean invert(int[] columnsOfBasis) {
    for (double[] row : inverse) {
      Arrays.fill(row, 0);
    }
    for (int row = 0; row < rows; row++) {
      inverse[row][row] = 1;
    }
    Arrays.fill(rowOf, 0, columns, -1);
    boolean[] taken = new boolean[rows];
    for (boolean single : new boolean[] {true, false}) {
      for (int column : columnsOfBasis) {
        if (index[column].length == 1 == single) {
          double[] change = column(column);
          int best = -1;
          for (int row = 0; row < rows; row++) {
            if (!taken[row] && (best < 0 || Math.abs(change[row]) > Math.abs(change[best]))) {
              best = row;
            }
          }
          if (Math.abs(change[best]) < PIVOT_ERROR) {
            return false;
          }
          eliminate(inverse, best, change);
          taken[best] = true;
          basic[best] = column;
          rowOf[column] = best;
        }
      }
    }
    return true;
  }
}
