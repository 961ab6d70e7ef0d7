package sheathwright.cutting;

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
  final StickProgram program;

  StickMaster(StickProblem problem, StickBound bound, StickKnapsack knapsack) {
    this.problem = problem;
    this.bound = bound;
    this.knapsack = knapsack;
    this.program = new StickProgram(problem, bound, bound::missing);
  }

  /**
   * Solves the program, making patterns for the demand given, which may be less than the whole when
   * bounds already hold some sticks.
   *
   * @return whether no pattern is missing any more
   */
  boolean solve(int[] demand, Patience patience) {
    boolean ended = program.simplex.solve(Double.POSITIVE_INFINITY, MOST_STEPS);
    for (int round = 0; ended && round < MOST_ROUNDS; round++) {
      long[] worth = bound.worth(program.simplex.prices);
      knapsack.fill(worth, demand);
      bound.learn(worth, knapsack, demand);
      boolean isNew = false;
      for (int k = 0; k < problem.stocks(); k++) {
        long paid = bound.scaled(program.simplex.prices[problem.lengths() + k]);
        long floor = paid + bound.error();
        if (knapsack.most(k) > floor) {
          StickPattern pattern = knapsack.best(k, floor);
          isNew |= pattern != null && program.add(pattern);
        }
      }
      if (!isNew) {
        return true;
      }
      if (patience.isSpent()) {
        return false;
      }
      ended = program.simplex.primal(MOST_STEPS);
    }
    return false;
  }
}
