package sheathwright.cutting.program;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import sheathwright.cutting.Patience;

/**
 * The least cost of a mix of columns that covers every row, columns in any fraction; columns can be
 * added later. Primal simplex with a dense inverse of the basis. Every row has a dear spare column
 * of its own, so there is always a mix.
 *
 * <p>Answers are floating point: take a bound from the {@link #prices()} only after they have been
 * rounded and checked against every column in whole numbers.
 */
public final class CoveringProgram {

  private static final double TINY = 1e-9;
  private static final double SMALLEST_PIVOT = 1e-7;
  private static final int STEPS_BETWEEN_INVERSIONS = 300;

  private record Column(double cost, int[] rows, double[] amounts) {}

  private final int rows;
  private final double[] demand;
  private final List<Column> columns = new ArrayList<>();
  private final int[] basis;
  private final boolean[] inBasis;
  private boolean[] columnInBasis = new boolean[64];
  private final double[][] inverse;
  private final double[] amount;
  private final double[] price;
  private final double spareCost;
  private int steps;

  /**
   * @param demand of each row; a negative one is a limited supply, and its columns have negative
   *     amounts
   * @param spareCost of covering one unit of a row by its spare column
   */
  public CoveringProgram(double[] demand, double spareCost) {
    rows = demand.length;
    this.demand = new double[rows];
    this.spareCost = spareCost;
    basis = new int[rows];
    inBasis = new boolean[2 * rows];
    inverse = new double[rows][rows];
    amount = new double[rows];
    price = new double[rows];
    for (int row = 0; row < rows; row++) {
      // Unequal small additions keep the simplex from going round in circles.
      this.demand[row] = demand[row] + 1e-7 * (1 + (row * 7919 % 1009) / 1009.0);
      boolean supply = demand[row] < 0;
      basis[row] = supply ? surplus(row) : spare(row);
      inBasis[-1 - basis[row]] = true;
    }
    invert();
  }

  // Basis entries: a column is its index; the spare and surplus of a row are negative.
  private int spare(int row) {
    return -1 - row;
  }

  private int surplus(int row) {
    return -1 - rows - row;
  }

  private boolean isSurplus(int entry) {
    return entry < -rows;
  }

  private int rowOf(int entry) {
    return (-1 - entry) % rows;
  }

  /**
   * Adds a column.
   *
   * @param counts how much it covers of each row, from the first row on
   * @param supplyRow the row that it takes one from, or -1
   */
  public void add(double cost, int[] counts, int supplyRow) {
    int[] used = IntStream.range(0, counts.length).filter(row -> counts[row] > 0).toArray();
    int[] columnRows = Arrays.copyOf(used, supplyRow < 0 ? used.length : used.length + 1);
    double[] amounts = new double[columnRows.length];
    for (int at = 0; at < used.length; at++) {
      amounts[at] = counts[used[at]];
    }
    if (supplyRow >= 0) {
      columnRows[used.length] = supplyRow;
      amounts[used.length] = -1;
    }
    columns.add(new Column(cost, columnRows, amounts));
    if (columns.size() > columnInBasis.length) {
      columnInBasis = Arrays.copyOf(columnInBasis, 2 * columnInBasis.length);
    }
  }

  private double cost(int entry) {
    if (entry >= 0) {
      return columns.get(entry).cost();
    }
    return isSurplus(entry) ? 0 : spareCost;
  }

  /**
   * Finds the cheapest mix of the columns so far.
   *
   * @return false if patience ran out or the arithmetic failed; prices and amounts are then those
   *     of a dearer mix, or of none
   */
  public boolean solve(Patience patience) {
    try {
      return improve(patience);
    } catch (ArithmeticException noInverse) {
      return false;
    }
  }

  private boolean improve(Patience patience) {
    findPrices();
    for (int step = 0; step < 50 * (rows + 20); step++) {
      if (step % 16 == 15 && patience.isSpent()) {
        return false;
      }
      int entering = entering();
      if (entering == Integer.MIN_VALUE) {
        return true;
      }
      if (!pivot(entering)) {
        invert();
        findPrices();
      }
      if (++steps % (STEPS_BETWEEN_INVERSIONS + 2 * rows) == 0) {
        invert();
        findPrices();
      }
    }
    return true;
  }

  private double reducedCost(Column column) {
    double cost = column.cost();
    for (int at = 0; at < column.rows().length; at++) {
      cost -= price[column.rows()[at]] * column.amounts()[at];
    }
    return cost;
  }

  private int entering() {
    int best = Integer.MIN_VALUE;
    double least = -TINY;
    for (int index = 0; index < columns.size(); index++) {
      if (!columnInBasis[index]) {
        double cost = reducedCost(columns.get(index));
        if (cost < least) {
          least = cost;
          best = index;
        }
      }
    }
    for (int row = 0; row < rows; row++) {
      if (price[row] < least && !inBasis[-1 - surplus(row)]) {
        least = price[row];
        best = surplus(row);
      }
    }
    return best;
  }

  private void column(int entry, double[] into) {
    Arrays.fill(into, 0);
    if (entry >= 0) {
      Column column = columns.get(entry);
      for (int at = 0; at < column.rows().length; at++) {
        into[column.rows()[at]] += column.amounts()[at];
      }
    } else {
      into[rowOf(entry)] = isSurplus(entry) ? -1 : 1;
    }
  }

  private boolean pivot(int entering) {
    double[] raw = new double[rows];
    column(entering, raw);
    double[] change = new double[rows];
    for (int row = 0; row < rows; row++) {
      double[] line = inverse[row];
      double sum = 0;
      for (int at = 0; at < rows; at++) {
        if (raw[at] != 0) {
          sum += line[at] * raw[at];
        }
      }
      change[row] = sum;
    }
    int leaving = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int row = 0; row < rows; row++) {
      if (change[row] > SMALLEST_PIVOT) {
        double ratio = Math.max(0, amount[row]) / change[row];
        if (ratio < least - 1e-12
            || ratio <= least + 1e-12 && leaving >= 0 && change[row] > change[leaving]) {
          least = Math.min(least, ratio);
          leaving = row;
        }
      }
    }
    if (leaving < 0) {
      return false;
    }
    double reduced = entering >= 0 ? reducedCost(columns.get(entering)) : price[rowOf(entering)];
    replace(leaving, entering, change, least, reduced);
    return true;
  }

  private void replace(
      int leaving, int entering, double[] change, double step, double reducedCost) {
    mark(basis[leaving], false);
    mark(entering, true);
    basis[leaving] = entering;
    double[] pivotLine = inverse[leaving];
    double pivot = change[leaving];
    for (int at = 0; at < rows; at++) {
      pivotLine[at] /= pivot;
      price[at] += reducedCost * pivotLine[at];
    }
    for (int row = 0; row < rows; row++) {
      double factor = change[row];
      if (row != leaving && factor != 0) {
        amount[row] -= step * factor;
        double[] line = inverse[row];
        for (int at = 0; at < rows; at++) {
          line[at] -= factor * pivotLine[at];
        }
      }
    }
    amount[leaving] = step;
  }

  private void mark(int entry, boolean in) {
    if (entry >= 0) {
      columnInBasis[entry] = in;
    } else {
      inBasis[-1 - entry] = in;
    }
  }

  private void findPrices() {
    Arrays.fill(price, 0);
    for (int row = 0; row < rows; row++) {
      double cost = cost(basis[row]);
      if (cost != 0) {
        for (int at = 0; at < rows; at++) {
          price[at] += cost * inverse[row][at];
        }
      }
    }
  }

  private void invert() {
    double[][] work = new double[rows][rows];
    double[] raw = new double[rows];
    for (int at = 0; at < rows; at++) {
      column(basis[at], raw);
      for (int row = 0; row < rows; row++) {
        work[row][at] = raw[row];
      }
      Arrays.fill(inverse[at], 0);
      inverse[at][at] = 1;
    }
    GaussJordan.invert(work, inverse);
    for (int row = 0; row < rows; row++) {
      double sum = 0;
      for (int at = 0; at < rows; at++) {
        sum += inverse[row][at] * demand[at];
      }
      amount[row] = sum;
    }
  }

  /** What one more unit of each row would cost. */
  public double[] prices() {
    return price.clone();
  }

  /** The cost of the mix. */
  public double value() {
    double value = 0;
    for (int row = 0; row < rows; row++) {
      value += cost(basis[row]) * amount[row];
    }
    return value;
  }

  /** How much of each column the mix takes. */
  public double[] amounts() {
    double[] amounts = new double[columns.size()];
    for (int row = 0; row < rows; row++) {
      if (basis[row] >= 0) {
        amounts[basis[row]] = Math.max(0, amount[row]);
      }
    }
    return amounts;
  }
}
