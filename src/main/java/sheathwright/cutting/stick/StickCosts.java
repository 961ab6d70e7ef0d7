package sheathwright.cutting.stick;

import java.util.BitSet;
import sheathwright.cutting.CommonUnit;

/** Which costs sums of whole sticks can come to at all. */
final class StickCosts {

  /**
   * Half a megabyte, a bit each. Where prices have a smaller common unit every cost counts as
   * possible. StickWork: half and double give the same plans and bounds in as many turns.
   */
  private static final int MOST_CELLS = 4_000_000;

  private final long divisor;
  private final BitSet reached;

  /**
   * @param prices of the sticks
   * @param highest no cost above this is asked for
   */
  StickCosts(long[] prices, long highest) {
    divisor = Math.max(1, CommonUnit.divisor(prices));
    if (highest / divisor > MOST_CELLS) {
      reached = null;
      return;
    }
    int cells = (int) (highest / divisor) + 1;
    reached = new BitSet(cells);
    reached.set(0);
    for (long price : prices) {
      int step = (int) Math.min(cells, price / divisor);
      for (int c = step; step > 0 && c < cells; c++) {
        if (reached.get(c - step)) {
          reached.set(c);
        }
      }
    }
  }

  /** The least possible cost that is this or more; a cost above the highest if there is none. */
  long from(long cost) {
    long cell = -Math.floorDiv(-Math.max(0, cost), divisor);
    if (reached == null || cell > Integer.MAX_VALUE) {
      return cell * divisor;
    }
    int next = reached.nextSetBit((int) cell);
    return next < 0 ? Math.max(cell, reached.size()) * divisor : next * divisor;
  }

  /** The greatest possible cost that is less than this, or −1. */
  long below(long cost) {
    long cell = Math.floorDiv(cost - 1, divisor);
    if (reached == null || cell < 0) {
      return cell < 0 ? -1 : cell * divisor;
    }
    int previous = reached.previousSetBit((int) Math.min(cell, reached.size()));
    return previous * divisor;
  }
}
