package sheathwright.cutting.stick;

import sheathwright.cutting.Patience;
import sheathwright.cutting.program.LinearProgram;

/**
 * Makes the patterns that the linear program needs, as it needs them (Gilmore and Gomory 1961), and
 * learns a bound from every knapsack that it fills.
 */
final class StickMaster {

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
    boolean isNew;
    do {
      simplex.primal();
      long[] worth = bound.worth(simplex.prices());
      knapsack.fill(worth, problem.demand);
      bound.learn(worth, knapsack);
      isNew = false;
      for (int k = 0; k < problem.stocks(); k++) {
        long floor = bound.scaled(simplex.prices()[problem.lengths() + k]) + bound.error();
        if (knapsack.most(k) > floor) {
          StickPattern pattern = knapsack.best(k, floor);
          isNew |= pattern != null && program.add(pattern);
        }
      }
    } while (isNew && !patience.isSpent());
    return !isNew && simplex.isOptimal();
  }
}
