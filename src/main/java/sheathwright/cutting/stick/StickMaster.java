package sheathwright.cutting.stick;

import sheathwright.cutting.Patience;
import sheathwright.cutting.program.LinearProgram;

/**
 * Makes the patterns that the linear program needs, as it needs them (Gilmore and Gomory 1961), and
 * learns a bound from every knapsack that it fills.
 */
final class StickMaster {

  private static final int MOST_ROUNDS = 20_000;
  private static final int MOST_STEPS = 100_000;

  private final StickProblem problem;
  private final StickBound bound;
  private final StickKnapsack knapsack;
  private final Patience patience;
  final StickProgram program;

  StickMaster(StickProblem problem, StickBound bound, StickKnapsack knapsack, Patience patience) {
    this.problem = problem;
    this.bound = bound;
    this.knapsack = knapsack;
    this.patience = patience;
    this.program = new StickProgram(problem, bound, bound::missing, patience);
  }

  /**
   * Solves the program.
   *
   * @return whether no pattern is missing any more
   */
  boolean solve() {
    LinearProgram simplex = program.simplex;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      simplex.primal(MOST_STEPS);
      long[] worth = bound.worth(simplex.prices());
      knapsack.fill(worth, problem.demand);
      bound.learn(worth, knapsack);
      boolean isNew = false;
      for (int k = 0; k < problem.stocks(); k++) {
        long floor = bound.scaled(simplex.prices()[problem.lengths() + k]) + bound.error();
        if (knapsack.most(k) > floor) {
          StickPattern pattern = knapsack.best(k, floor);
          isNew |= pattern != null && program.add(pattern);
        }
      }
      if (!isNew) {
        return simplex.isOptimal();
      }
      if (patience.isSpent()) {
        return false;
      }
    }
    return false;
  }
}
