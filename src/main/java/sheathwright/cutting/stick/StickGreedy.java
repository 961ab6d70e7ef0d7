package sheathwright.cutting.stick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sheathwright.cutting.Patience;

/**
 * Plans made stick by stick: each time the stick that holds most worth for its price. After a plan,
 * pieces that were cut wastefully are made worth more and it is tried again (sequential value
 * correction, Mukhacheva, Belov and Scheithauer 2000).
 */
final class StickGreedy {

  /** Parts of a unit of money for each unit of length: only proportions matter. */
  private static final double UNIT = 1L << 24;

  // StickWork: 1 makes 4 plans dearer and 3 cheaper and 2 bounds lower; 1.04 makes 4 dearer and 4
  // cheaper and 2 bounds higher.
  private static final double LONG_PIECES_FIRST = 1.02;

  /**
   * Cells that may be filled for one careful plan: a minute or two. Not reached at half by any list
   * of StickWork and ManyLengthsWork; it is for some thousands of pieces.
   */
  private static final double MOST_WORK = 2e10;

  private final StickProblem problem;
  private final StickKnapsack knapsack;
  private final Patience patience;
  private final boolean isLarge;

  StickGreedy(StickProblem problem, StickKnapsack knapsack, Patience patience) {
    this.problem = problem;
    this.knapsack = knapsack;
    this.patience = patience;
    this.isLarge = knapsack.cells() * problem.pieces() > MOST_WORK;
  }

  /**
   * The best of several plans.
   *
   * @param firstWorth of each length, 0 or more; only proportions matter
   * @param careful the best pattern for each stick, else the longest pieces first
   * @param rounds how many plans are made
   * @param goal a plan that costs no more ends the search
   * @return null if in no plan the supply was enough
   */
  List<StickPattern> best(long[] firstWorth, boolean careful, int rounds, long goal) {
    long[] worth = firstWorth.clone();
    List<StickPattern> best = null;
    for (int round = 0; round == 0 || round < rounds && !patience.isSpent(); round++) {
      List<StickPattern> plan = complete(List.of(), worth, careful && !isLarge);
      if (plan == null) {
        return best;
      }
      if (best == null || problem.cost(plan) < problem.cost(best)) {
        best = plan;
      }
      if (problem.cost(best) <= goal) {
        return best;
      }
      correct(worth, plan);
    }
    return best;
  }

  /** Adds sticks for all that the given sticks leave, or returns null if the supply ends. */
  List<StickPattern> complete(List<StickPattern> given, long[] worth) {
    return complete(given, worth, !isLarge);
  }

  private List<StickPattern> complete(List<StickPattern> given, long[] worth, boolean careful) {
    List<StickPattern> sticks = new ArrayList<>(given);
    int[] left = problem.demand.clone();
    int[] supply = problem.most.clone();
    given.forEach(stick -> take(stick, 1, left, supply));
    long[] positive = Arrays.stream(worth).map(w -> Math.max(1, w)).toArray();
    while (Arrays.stream(left).anyMatch(n -> n > 0)) {
      StickPattern next = next(left, supply, positive, careful && !patience.isSpent());
      if (next == null) {
        return null;
      }
      int times = supply[next.stock()];
      for (int i = 0; i < next.piece().length; i++) {
        times = Math.min(times, left[next.piece()[i]] / next.count()[i]);
      }
      take(next, times, left, supply);
      for (int n = 0; n < times; n++) {
        sticks.add(next);
      }
    }
    return Arrays.stream(supply).allMatch(n -> n >= 0) ? sticks : null;
  }

  private static void take(StickPattern stick, int times, int[] left, int[] supply) {
    supply[stick.stock()] -= times;
    for (int i = 0; i < stick.piece().length; i++) {
      int piece = stick.piece()[i];
      left[piece] = Math.max(0, left[piece] - times * stick.count()[i]);
    }
  }

  /** The cheapest stick that ends the work, else the one that holds most worth for its price. */
  private StickPattern next(int[] left, int[] supply, long[] worth, boolean careful) {
    if (careful) {
      knapsack.fill(worth, left);
    }
    long rest = 0;
    for (int i = 0; i < left.length; i++) {
      rest += left[i] * problem.length[i];
    }
    StickPattern best = null;
    StickPattern last = null;
    for (int k = 0; k < problem.stocks(); k++) {
      if (supply[k] <= 0) {
        continue;
      }
      if (problem.room[k] >= rest) {
        last =
            last == null || problem.price[k] < problem.price[last.stock()] ? full(k, left) : last;
      } else if (last == null) {
        StickPattern pattern = careful ? knapsack.best(k, 0) : full(k, left);
        if (pattern != null && pattern.piece().length > 0 && isBetter(pattern, best, worth)) {
          best = pattern;
        }
      }
    }
    return last != null ? last : best;
  }

  private boolean isBetter(StickPattern pattern, StickPattern than, long[] worth) {
    return than == null
        || (double) pattern.worth(worth) * problem.price[than.stock()]
            > (double) than.worth(worth) * problem.price[pattern.stock()];
  }

  /** The longest pieces first, as many of each as have room. */
  private StickPattern full(int stock, int[] left) {
    int[] piece = new int[left.length];
    int[] count = new int[left.length];
    int kinds = 0;
    long room = problem.room[stock];
    for (int i = 0; i < left.length; i++) {
      int n = (int) Math.min(left[i], room / problem.length[i]);
      if (n > 0) {
        piece[kinds] = i;
        count[kinds++] = n;
        room -= n * problem.length[i];
      }
    }
    return new StickPattern(stock, Arrays.copyOf(piece, kinds), Arrays.copyOf(count, kinds));
  }

  private void correct(long[] worth, List<StickPattern> plan) {
    for (StickPattern stick : plan) {
      double each = UNIT * problem.price[stick.stock()] / stick.worth(problem.length);
      for (int piece : stick.piece()) {
        double fair = each * StrictMath.pow(problem.length[piece], LONG_PIECES_FIRST);
        worth[piece] = Math.round(Math.min(1e12, (worth[piece] + fair) / 2));
      }
    }
  }
}
