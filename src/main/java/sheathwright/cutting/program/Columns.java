package sheathwright.cutting.program;

import java.util.Arrays;

/** Columns of a linear program: whole entries in some rows, a cost, and two finite bounds. */
public final class Columns {

  /** Room to begin with; it doubles when it is full, and so makes no difference. */
  private static final int FIRST_SIZE = 256;

  int count;
  int[][] index = new int[FIRST_SIZE][];
  int[][] value = new int[FIRST_SIZE][];
  double[] cost = new double[FIRST_SIZE];
  double[] low = new double[FIRST_SIZE];
  double[] high = new double[FIRST_SIZE];

  private double[] most = new double[FIRST_SIZE];

  /** Row that a column is basic in, or −1. */
  int[] rowOf = new int[FIRST_SIZE];

  /** Whether a column that is not basic rests at its high bound. */
  boolean[] atHigh = new boolean[FIRST_SIZE];

  /** Adds a column that rests at 0, its low bound, and returns its number. */
  public int add(int[] rows, int[] entries, double columnCost, double highest) {
    if (count == cost.length) {
      grow(2 * count);
    }
    index[count] = rows;
    value[count] = entries;
    cost[count] = columnCost;
    low[count] = 0;
    high[count] = highest;
    most[count] = highest;
    rowOf[count] = -1;
    return count++;
  }

  private void grow(int size) {
    index = Arrays.copyOf(index, size);
    value = Arrays.copyOf(value, size);
    cost = Arrays.copyOf(cost, size);
    low = Arrays.copyOf(low, size);
    high = Arrays.copyOf(high, size);
    most = Arrays.copyOf(most, size);
    rowOf = Arrays.copyOf(rowOf, size);
    atHigh = Arrays.copyOf(atHigh, size);
  }

  /** How many there are. */
  public int count() {
    return count;
  }

  /** The least that a column may be. */
  public double low(int column) {
    return low[column];
  }

  /** The most that a column may be. */
  public double high(int column) {
    return high[column];
  }

  /** From now on the column is at least this. */
  public void setLow(int column, double least) {
    low[column] = least;
  }

  /** From now on the column is at most this. */
  public void setHigh(int column, double highest) {
    high[column] = highest;
  }

  /** Whether the column may be as much as when it was added. */
  public boolean isFreeAbove(int column) {
    return high[column] == most[column];
  }

  /** Takes every bound away but those that the columns were added with. */
  public void free() {
    Arrays.fill(low, 0, count, 0);
    System.arraycopy(most, 0, high, 0, count);
  }

  /** Gives a column a one in a new row. */
  void extend(int column, int row) {
    int size = index[column].length;
    index[column] = Arrays.copyOf(index[column], size + 1);
    value[column] = Arrays.copyOf(value[column], size + 1);
    index[column][size] = row;
    value[column][size] = 1;
  }

  boolean isBasic(int column) {
    return rowOf[column] >= 0;
  }

  /** The bound at which a column rests that is not basic. */
  double rest(int column) {
    return atHigh[column] ? high[column] : low[column];
  }

  /** The column multiplied by a row of numbers. */
  double dot(double[] row, int column) {
    int[] rows = index[column];
    int[] entries = value[column];
    double sum = 0;
    for (int i = 0; i < rows.length; i++) {
      sum += row[rows[i]] * entries[i];
    }
    return sum;
  }

  /** Takes the column so many times from the right sides. */
  void take(double[] from, int column, double times) {
    if (times != 0) {
      for (int i = 0; i < index[column].length; i++) {
        from[index[column][i]] -= times * value[column][i];
      }
    }
  }
}
