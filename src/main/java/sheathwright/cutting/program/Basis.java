package sheathwright.cutting.program;

import java.util.Arrays;

/**
 * The basic columns of a linear program, one for each row, with the inverse of their matrix and
 * their levels. The inverse is changed with every exchange, and made afresh when it has drifted.
 */
final class Basis {

  // Of 60 stick lists in 0.2 s each: half 35 proven, 5.5 s of CPU; double 35, 5.3 s; this 35, 5.4
  // s.
  private static final int EXCHANGES_BETWEEN_CHECKS = 30;

  /**
   * A smaller pivot would be mostly drift. StickWork: half and double the same plans and bounds in
   * as many turns.
   */
  static final double LEAST_PIVOT = 1e-8;

  /**
   * What equations may be missed by before the inverse is made afresh: doubles of some thousand
   * pieces and some hundred rows are summed to 1e-11, and 1e-7 (LinearProgram) must stay far above.
   * StickWork: half and double give the same plans, one bound lower and 2 and 1 higher, 0.996 and
   * 1.000 of the turns.
   */
  private static final double MOST_DRIFT = 1e-9;

  private final Columns columns;
  int[] basic;
  double[] level;
  double[][] inverse;
  private double[] side;
  private int[] firstBasis;
  private int exchanges;

  /**
   * Starts from columns that have one entry each, in their own row.
   *
   * @param side the right side of each row
   */
  Basis(Columns columns, int[] firstBasis, double[] side) {
    this.columns = columns;
    this.firstBasis = firstBasis.clone();
    this.basic = firstBasis.clone();
    this.side = side.clone();
    this.level = new double[side.length];
    this.inverse = new double[side.length][side.length];
    invert();
    refresh();
  }

  /** What each basic level loses when a column that is not basic rises by one. */
  double[] column(int column) {
    double[] change = new double[basic.length];
    for (int row = 0; row < change.length; row++) {
      change[row] = columns.dot(inverse[row], column);
    }
    return change;
  }

  /** Moves all levels as a column that is not basic moves by so much. */
  void move(double[] change, double by) {
    for (int row = 0; row < change.length; row++) {
      level[row] -= by * change[row];
    }
  }

  /** Puts a column into a row in place of the one that was basic there. */
  void exchange(int row, int entering, double[] change, double newLevel, boolean leavesHigh) {
    int left = basic[row];
    columns.rowOf[left] = -1;
    columns.atHigh[left] = leavesHigh;
    basic[row] = entering;
    columns.rowOf[entering] = row;
    level[row] = newLevel;
    eliminate(row, change);
    if (++exchanges % EXCHANGES_BETWEEN_CHECKS == 0) {
      refresh();
    }
  }

  private void eliminate(int leaving, double[] change) {
    double[] pivotRow = inverse[leaving];
    double factor = 1 / change[leaving];
    for (int i = 0; i < pivotRow.length; i++) {
      pivotRow[i] *= factor;
    }
    for (int row = 0; row < inverse.length; row++) {
      double times = change[row];
      if (row != leaving && times != 0) {
        double[] target = inverse[row];
        for (int i = 0; i < target.length; i++) {
          target[i] -= times * pivotRow[i];
        }
      }
    }
  }

  /** Adds a row, right side 0, in which a new column is basic with the entry −1. */
  void addRow(int[] counted, int newColumn) {
    int row = basic.length;
    double[] last = new double[row + 1];
    last[row] = -1;
    for (int column : counted) {
      if (columns.isBasic(column)) {
        for (int i = 0; i < row; i++) {
          last[i] += inverse[columns.rowOf[column]][i];
        }
      }
    }
    inverse = Arrays.copyOf(inverse, row + 1);
    for (int i = 0; i < row; i++) {
      inverse[i] = Arrays.copyOf(inverse[i], row + 1);
    }
    inverse[row] = last;
    side = Arrays.copyOf(side, row + 1);
    level = Arrays.copyOf(level, row + 1);
    basic = Arrays.copyOf(basic, row + 1);
    firstBasis = Arrays.copyOf(firstBasis, row + 1);
    basic[row] = newColumn;
    firstBasis[row] = newColumn;
    columns.rowOf[newColumn] = row;
    refresh();
  }

  /** Levels afresh; the inverse too where it has drifted. */
  void refresh() {
    double[] rest = rest();
    setLevels(rest);
    if (!(drift(rest) <= MOST_DRIFT)) {
      invert();
      setLevels(rest());
    }
  }

  /** Right sides less what the resting columns take. */
  private double[] rest() {
    double[] rest = side.clone();
    for (int column = 0; column < columns.count; column++) {
      if (!columns.isBasic(column)) {
        columns.take(rest, column, columns.rest(column));
      }
    }
    return rest;
  }

  private void setLevels(double[] rest) {
    for (int row = 0; row < rest.length; row++) {
      double sum = 0;
      double[] from = inverse[row];
      for (int i = 0; i < rest.length; i++) {
        sum += from[i] * rest[i];
      }
      level[row] = sum;
    }
  }

  private double drift(double[] rest) {
    double[] left = rest.clone();
    for (int row = 0; row < left.length; row++) {
      columns.take(left, basic[row], level[row]);
    }
    double most = 0;
    for (double amount : left) {
      most = Math.max(most, Math.abs(amount));
    }
    return most;
  }

  private void invert() {
    if (!invert(basic.clone())) {
      invert(firstBasis);
    }
  }

  /** Columns with one entry first, then the others; returns false if the matrix is singular. */
  private boolean invert(int[] columnsOfBasis) {
    for (int row = 0; row < inverse.length; row++) {
      Arrays.fill(inverse[row], 0);
      inverse[row][row] = 1;
    }
    Arrays.fill(columns.rowOf, 0, columns.count, -1);
    boolean[] taken = new boolean[inverse.length];
    for (boolean single : new boolean[] {true, false}) {
      for (int column : columnsOfBasis) {
        if (columns.index[column].length == 1 == single && !place(column, taken)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Puts a column into the free row where it is largest. */
  private boolean place(int column, boolean[] taken) {
    double[] change = column(column);
    int best = -1;
    for (int row = 0; row < change.length; row++) {
      if (!taken[row] && (best < 0 || Math.abs(change[row]) > Math.abs(change[best]))) {
        best = row;
      }
    }
    if (!(Math.abs(change[best]) >= LEAST_PIVOT)) {
      return false;
    }
    eliminate(best, change);
    taken[best] = true;
    basic[best] = column;
    columns.rowOf[column] = best;
    return true;
  }
}
