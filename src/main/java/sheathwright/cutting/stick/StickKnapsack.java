package sheathwright.cutting.stick;

import java.util.Arrays;
import java.util.function.Predicate;

/**
 * The most that can be cut from one stick when every piece has a worth. One table serves all
 * stocks: {@code table[i][c]} is the most from the lengths i and shorter on c cells.
 *
 * <p>A cell is one unit of length where the table is small enough. Else a cell is several units:
 * pieces are rounded down to cells, so that the table says too much rather than too little.
 * Patterns are always measured in units.
 */
final class StickKnapsack {

  // ManyLengthsWork: half all 8 bounds lower, one plan cheaper; double 2 bounds higher, one plan
  // dearer.
  private static final int MOST_CELLS = 16_384;
  // 64 MB. ManyLengthsWork: half 4 bounds lower; double the same plans and bounds.
  private static final int MOST_ENTRIES = 8_000_000;

  // StickWork, ManyLengthsWork: half and double give the same plans and bounds in as many turns.
  private static final int MOST_LOOKS = 20_000;
  // StickWork: half and double give the same plans and bounds in as many turns.
  private static final int MOST_LOOKS_FOR_ALL = 3_000_000;

  private final StickProblem problem;
  private final long cell;
  private final long[][] rows;
  private final long[][] table;
  private long[] worth;
  private int[] demand;

  private final int[] chosen;
  private long best;
  private StickPattern bestPattern;
  private int looks;

  StickKnapsack(StickProblem problem) {
    this.problem = problem;
    long longest = Arrays.stream(problem.room).max().orElse(0);
    int cells = Math.max(1_000, Math.min(MOST_CELLS, MOST_ENTRIES / (problem.lengths() + 1)));
    this.cell = longest / cells + 1;
    this.rows = new long[problem.lengths() + 1][(int) (longest / cell) + 1];
    this.table = rows.clone();
    this.chosen = new int[problem.lengths()];
  }

  /** Number of entries in the table. */
  double cells() {
    return (double) rows.length * rows[0].length;
  }

  /** Fills the table for these worths, 0 or more, and at most so many pieces of each length. */
  void fill(long[] worthOfPiece, int[] demandOfPiece) {
    worth = worthOfPiece.clone();
    demand = demandOfPiece.clone();
    for (int i = problem.lengths() - 1; i >= 0; i--) {
      long[] shorter = table[i + 1];
      if (demand[i] == 0 || worth[i] == 0) {
        table[i] = shorter;
        continue;
      }
      long[] row = rows[i];
      table[i] = row;
      System.arraycopy(shorter, 0, row, 0, row.length);
      int size = (int) (problem.length[i] / cell);
      int most = size == 0 ? demand[i] : Math.min(demand[i], (row.length - 1) / size);
      for (int n = 1; n <= most; n++) {
        long gain = n * worth[i];
        for (int c = n * size; c < row.length; c++) {
          row[c] = Math.max(row[c], shorter[c - n * size] + gain);
        }
      }
    }
  }

  /** No pattern of the stock is worth more; where a cell is one unit, one is worth as much. */
  long most(int stock) {
    return table[0][(int) (problem.room[stock] / cell)];
  }

  /** The pattern of the stock that is worth most, if more than the floor; else null. */
  StickPattern best(int stock, long floor) {
    best = cell == 1 ? Math.max(floor, most(stock) - 1) : floor;
    bestPattern = null;
    looks = 0;
    look(stock, 0, problem.room[stock], 0);
    return bestPattern;
  }

  private void look(int stock, int from, long left, long value) {
    int i = from;
    int c = (int) (left / cell);
    if (value + table[i][c] <= best || ++looks > MOST_LOOKS) {
      return;
    }
    while (i < problem.lengths() && table[i][c] == table[i + 1][c]) {
      i++;
    }
    if (i == problem.lengths()) {
      best = value;
      bestPattern = pattern(stock);
      return;
    }
    for (int n = (int) Math.min(demand[i], left / problem.length[i]); n >= 0; n--) {
      chosen[i] = n;
      look(stock, i + 1, left - n * problem.length[i], value + n * worth[i]);
    }
    chosen[i] = 0;
  }

  private StickPattern pattern(int stock) {
    int[] piece = new int[chosen.length];
    int kinds = 0;
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i] > 0) {
        piece[kinds++] = i;
      }
    }
    int[] pieces = Arrays.copyOf(piece, kinds);
    return new StickPattern(stock, pieces, Arrays.stream(pieces).map(i -> chosen[i]).toArray());
  }

  /**
   * Hands over every pattern of the stock that is worth so much and has no room for another piece
   * that is wanted.
   *
   * @param taker says whether it wants more
   * @return whether all were handed over; not so when the taker or the work says enough
   */
  boolean each(int stock, long least, Predicate<StickPattern> taker) {
    looks = 0;
    return each(stock, 0, problem.room[stock], least, Long.MAX_VALUE, taker);
  }

  private boolean each(
      int stock,
      int i,
      long left,
      long least,
      long shortestSkipped,
      Predicate<StickPattern> taker) {
    if (table[i][(int) (left / cell)] < least) {
      return true;
    }
    if (i == problem.lengths()) {
      return left >= shortestSkipped || taker.test(pattern(stock));
    }
    boolean goOn = ++looks < MOST_LOOKS_FOR_ALL;
    int most = (int) Math.min(demand[i], left / problem.length[i]);
    for (int n = most; n >= 0 && goOn; n--) {
      chosen[i] = n;
      goOn =
          each(
              stock,
              i + 1,
              left - n * problem.length[i],
              least - n * worth[i],
              n < demand[i] ? problem.length[i] : shortestSkipped,
              taker);
    }
    chosen[i] = 0;
    return goOn;
  }
}
