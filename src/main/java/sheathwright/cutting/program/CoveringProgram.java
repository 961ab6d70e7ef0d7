package sheathwright.cutting.program;

import java.util.Arrays;
import java.util.stream.IntStream;
import sheathwright.cutting.Patience;

/**
 * The least cost of a mix of columns that covers every row, columns in any fraction; columns can be
 * added later. Every row has a dear spare column of its own, so there is always a mix.
 *
 * <p>Answers are floating point: take a bound from the {@link #prices()} only after they have been
 * rounded and checked against every column in whole numbers.
 */
public final class CoveringProgram {

  /** A column that lowers the cost by no more, at a cost of about one, is not worth adding. */
  public static final double SMALLEST_GAIN = LinearProgram.ADDITION;

  private final int firstColumn;
  private final double much;
  private final Columns columns = new Columns();
  private final LinearProgram program;

  /**
   * @param demand of each row; a negative one is a limited supply, and its columns have negative
   *     amounts
   * @param spareCost of covering one unit of a row by its spare column
   * @param patience ends solutions early
   */
  public CoveringProgram(int[] demand, double spareCost, Patience patience) {
    int rows = demand.length;
    much = 2.0 * IntStream.of(demand).map(Math::abs).sum() + 10;
    int[] basis = new int[rows];
    for (int row = 0; row < rows; row++) {
      int spare = columns.add(new int[] {row}, new int[] {1}, spareCost, much);
      int surplus = columns.add(new int[] {row}, new int[] {-1}, 0, much * much);
      basis[row] = demand[row] < 0 ? surplus : spare;
    }
    firstColumn = columns.count();
    program = new LinearProgram(columns, basis, demand, 1, patience);
  }

  /**
   * Adds a column.
   *
   * @param counts how much it covers of each row, from the first row on
   * @param supplyRow the row that it takes one from, or -1
   */
  public void add(double cost, int[] counts, int supplyRow) {
    int[] used = IntStream.range(0, counts.length).filter(row -> counts[row] > 0).toArray();
    int entries = supplyRow < 0 ? used.length : used.length + 1;
    int[] index = Arrays.copyOf(used, entries);
    int[] value = Arrays.copyOf(IntStream.of(used).map(row -> counts[row]).toArray(), entries);
    if (supplyRow >= 0) {
      index[used.length] = supplyRow;
      value[used.length] = -1;
    }
    columns.add(index, value, cost, much);
  }

  /**
   * Finds the cheapest mix of the columns so far.
   *
   * @return false if patience ran out first; prices and amounts are then those of a dearer mix
   */
  public boolean solve() {
    program.primal();
    return program.isOptimal();
  }

  /** What one more unit of each row would cost. */
  public double[] prices() {
    return program.prices();
  }

  /** The cost of the mix. */
  public double value() {
    return program.cost();
  }

  /** How much of each column the mix takes. */
  public double[] amounts() {
    return IntStream.range(firstColumn, columns.count())
        .mapToDouble(program::level)
        .map(amount -> Math.max(0, amount))
        .toArray();
  }
}
