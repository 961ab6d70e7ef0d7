package sheathwright.cutting.stick;

import java.util.Arrays;
import sheathwright.cutting.program.Certificate;

/**
 * True lower bounds from prices that are only nearly right. Worths are made whole numbers first,
 * and from there on all is exact: whatever the worths, a stick of stock k cannot hold more than its
 * knapsack value, so any plan costs at least what the bound says.
 */
final class StickBound {

  /**
   * Of the dearest stick's price in parts: finer than the 2^-22 of it that counts as nothing, and
   * the sum over 2^17 sticks stays below 2^51.
   */
  private static final int BITS = 34;

  /** A stick of the most pieces that are each worth so much stays below the highest long. */
  private static final double FARTHEST = 9e13;

  private final StickProblem problem;
  private final long scale;
  private final long dearest;
  private long best;
  private long[] bestWorth;
  private long[] bestEarning;

  StickBound(StickProblem problem) {
    this.problem = problem;
    this.dearest = Math.max(1, Arrays.stream(problem.price).max().orElse(1));
    this.scale = 1L << Math.max(0, BITS - (64 - Long.numberOfLeadingZeros(dearest)));
    this.bestWorth = new long[problem.lengths()];
    this.bestEarning = new long[problem.stocks()];
  }

  /** A usual cost. */
  double unitCost() {
    return dearest;
  }

  /** More than a plan can cost in which every stick holds a piece. */
  long moreThanAnyPlan() {
    return Arrays.stream(problem.price).max().orElse(0) * problem.pieces() + 1;
  }

  /** What a missing piece costs in the program: more than any way to cut it. */
  double missing(int piece) {
    double cheapest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < problem.stocks(); k++) {
      if (problem.room[k] >= problem.length[piece] && problem.most[k] >= problem.pieces()) {
        cheapest = Math.min(cheapest, problem.price[k]);
      }
    }
    return cheapest < Double.POSITIVE_INFINITY ? 1.5 * cheapest + 0.01 * dearest : 20.0 * dearest;
  }

  /** A price in whole parts, kept from growing too far. */
  long scaled(double price) {
    return (long) Math.max(-FARTHEST, Math.min(Math.rint(price * scale), FARTHEST));
  }

  /** A whole cost in whole parts. */
  long parts(long cost) {
    return cost * scale;
  }

  /** What counts as nothing, in parts. */
  long error() {
    return Math.max(1, scale * dearest >> 22);
  }

  /** Worth of each piece in whole parts, 0 or more. */
  long[] worth(double[] prices) {
    long[] worth = new long[problem.lengths()];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = Math.max(0, (long) Math.floor(Math.min(prices[i] * scale, FARTHEST)));
    }
    return worth;
  }

  /** Worth in proportion to length, above what any stick costs by length. */
  long[] worthByLength() {
    double shortest = Arrays.stream(problem.room).min().orElse(1);
    return Arrays.stream(problem.length)
        .map(length -> (long) Math.min(length / shortest * dearest * scale, FARTHEST))
        .toArray();
  }

  /**
   * Takes a filled knapsack into account. The worths are also tried in proportion, made smaller
   * until a stock pays for what it holds (Farley 1990): for limited stock that need not be all.
   */
  void learn(long[] worth, StickKnapsack knapsack) {
    consider(worth, 1, knapsack);
    for (int k = 0; k < problem.stocks(); k++) {
      if (knapsack.most(k) > parts(problem.price[k])) {
        double share = (double) parts(problem.price[k]) / knapsack.most(k);
        consider(Arrays.stream(worth).map(w -> (long) (w * share)).toArray(), share, knapsack);
      }
    }
  }

  private void consider(long[] worth, double share, StickKnapsack knapsack) {
    Sum sum = new Sum();
    for (int i = 0; i < worth.length; i++) {
      sum.add(worth[i], problem.demand[i]);
    }
    long[] earning = new long[problem.stocks()];
    for (int k = 0; k < problem.stocks(); k++) {
      // Worths were rounded down, so the stick's value times the share, rounded up, is safe.
      long value =
          share == 1 ? knapsack.most(k) : (long) (knapsack.most(k) * share * (1 + 1e-12)) + 1;
      earning[k] = Math.max(0, value - parts(problem.price[k]));
      sum.add(-earning[k], problem.most[k]);
    }
    if (sum.value() > best) {
      best = sum.value();
      bestWorth = worth.clone();
      bestEarning = earning;
    }
  }

  /** No plan costs less than this, in parts. */
  long best() {
    return best;
  }

  /** The worths that prove the best bound. */
  long[] bestWorth() {
    return bestWorth.clone();
  }

  /** The best bound with what proves it, in the caller's own indexes. */
  Certificate certificate() {
    return problem.certificate(scale, bestWorth, bestEarning, cost(best));
  }

  /** Parts as a whole cost, rounded up. */
  long cost(long parts) {
    return Math.floorDiv(parts - 1, scale) + 1;
  }

  /** A sum of products that knows when it has overflowed. */
  static final class Sum {
    private long exact;
    private double roughly;

    void add(long one, long other) {
      exact += one * other;
      roughly += Math.abs((double) one * other);
    }

    /** The sum, or the lowest number if it may have overflowed. */
    long value() {
      return roughly > 4e18 ? Long.MIN_VALUE / 2 : exact;
    }
  }
}
