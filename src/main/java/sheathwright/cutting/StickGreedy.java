package sheathwright.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Plans made stick by stick: each time the stick that holds most worth for its price. After a plan,
 * pieces that were cut wastefully are made worth more and it is tried again (sequential value
 * correction, Mukhacheva, Belov and Scheithauer 2000).
 */
final class StickGreedy {

  private static final long UNIT = 1L << 24;

  private final StickProblem problem;
  private final StickKnapsack knapsack;

  StickGreedy(StickProblem problem, StickKnapsack knapsack) {
    this.problem = problem;
    this.knapsack = knapsack;
  }

  /** The best of several plans, or null if in none the supply was enough. */
  List<StickPattern> best(long[] firstWorth, int rounds, long goal, Patience patience) {
    long[] worth = firstWorth.clone();
    List<StickPattern> best = null;
    for (int round = 0; round < rounds && !patience.isSpent(); round++) {
      List<StickPattern> plan = complete(List.of(), worth);
      if (plan != null && (best == null || problem.cost(plan) < problem.cost(best))) {
        best = plan;
        if (problem.cost(best) <= goal) {
          return best;
        }
      }
      if (plan != null) {
        correct(worth, plan);
      }
    }
    return best;
  }

  /** Adds sticks for all that the given sticks leave, or returns null if the supply ends. */
  List<StickPattern> complete(List<StickPattern> given, long[] worth) {
    List<StickPattern> sticks = new ArrayList<>(given);
    int[] left = problem.demand.clone();
    int[] supply = problem.most.clone();
    for (StickPattern stick : given) {
      supply[stick.stock()]--;
      for (int i = 0; i < stick.piece().length; i++) {
        left[stick.piece()[i]] = Math.max(0, left[stick.piece()[i]] - stick.count()[i]);
      }
    }
    long[] positive = Arrays.stream(worth).map(w -> Math.max(1, w)).toArray();
    while (Arrays.stream(left).anyMatch(n -> n > 0)) {
      knapsack.fill(positive, left);
      StickPattern next = next(left, supply);
      if (next == null) {
        return null;
      }
      int times = supply[next.stock()];
      for (int i = 0; i < next.piece().length; i++) {
        times = Math.min(times, left[next.piece()[i]] / next.count()[i]);
      }
      for (int i = 0; i < next.piece().length; i++) {
        left[next.piece()[i]] -= times * next.count()[i];
      }
      supply[next.stock()] -= times;
      for (int n = 0; n < times; n++) {
        sticks.add(next);
      }
    }
    return sticks;
  }

  private StickPattern next(int[] left, int[] supply) {
    long rest = 0;
    for (int i = 0; i < left.length; i++) {
      rest += left[i] * problem.length[i];
    }
    int best = -1;
    int closing = -1;
    for (int k = 0; k < problem.stocks(); k++) {
      if (supply[k] > 0 && knapsack.most(k) > 0) {
        if (problem.room[k] >= rest
            && (closing < 0 || problem.price[k] < problem.price[closing])) {
          closing = k;
        }
        if (best < 0 || isBetter(k, best)) {
          best = k;
        }
      }
    }
    int chosen = closing >= 0 ? closing : best;
    return chosen < 0 ? null : knapsack.best(chosen, 0);
  }

  private boolean isBetter(int stock, int than) {
    return (double) knapsack.most(stock) * problem.price[than]
        > (double) knapsack.most(than) * problem.price[stock];
  }

  private void correct(long[] worth, List<StickPattern> plan) {
    for (StickPattern stick : plan) {
      double used = stick.worth(problem.length);
      for (int i = 0; i < stick.piece().length; i++) {
        int piece = stick.piece()[i];
        double fair =
            UNIT * problem.price[stick.stock()] * StrictMath.pow(problem.length[piece], 1.02) / used;
        worth[piece] = Math.round((worth[piece] + fair) / 2);
      }
    }
  }
}
