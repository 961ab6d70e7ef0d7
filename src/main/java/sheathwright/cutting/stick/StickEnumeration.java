package sheathwright.cutting.stick;

import java.util.ArrayList;
import java.util.List;

/**
 * All patterns that a plan below some cost could use. By the best bound's worths every plan costs
 * the bound and, on top of it, what each of its sticks costs more than its pieces are worth; a
 * pattern that alone costs too much more is of no use.
 */
final class StickEnumeration {

  private final StickProblem problem;
  private final StickBound bound;
  private final StickKnapsack knapsack;

  StickEnumeration(StickProblem problem, StickBound bound, StickKnapsack knapsack) {
    this.problem = problem;
    this.bound = bound;
    this.knapsack = knapsack;
  }

  /** What a plan of this cost may waste, in the bound's parts. */
  long budget(long cost) {
    return bound.parts(cost) - bound.best();
  }

  /** Every pattern that wastes no more than the budget, or null if there are more than most. */
  List<StickPattern> within(long budget, int most) {
    knapsack.fill(bound.bestWorth(), problem.demand);
    List<StickPattern> patterns = new ArrayList<>();
    for (int k = 0; k < problem.stocks(); k++) {
      long unpaid = Math.max(0, bound.parts(problem.price[k]) - knapsack.most(k));
      long least = knapsack.most(k) - (budget - unpaid);
      boolean all =
          unpaid > budget
              || knapsack.each(
                  k,
                  least,
                  pattern -> {
                    patterns.add(pattern);
                    return patterns.size() <= most;
                  });
      if (!all) {
        return null;
      }
    }
    return patterns;
  }
}
