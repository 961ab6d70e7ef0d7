package sheathwright.cutting;

import java.util.List;

final class StickSearch {

  static boolean debug = false;
  private static final int MOST_PATTERNS = 30_000;

  private final StickProblem problem;
  private final StickBound bound;
  private final StickMaster master;
  private final StickKnapsack knapsack;
  private final StickGreedy greedy;
  private StickCosts costs;
  private List<StickPattern> best;
  private long cost;
  private long atLeast;

  StickSearch(StickProblem problem) {
    this.problem = problem;
    this.bound = new StickBound(problem);
    this.knapsack = new StickKnapsack(problem);
    this.master = new StickMaster(problem, bound, knapsack);
    this.greedy = new StickGreedy(problem, knapsack);
  }

  StickPlan plan(Patience patience) {
    cost = Long.MAX_VALUE;
    offer(greedy.best(problem.length, 5, 0, patience));
    costs = new StickCosts(problem.price, best == null ? 0 : cost);
    for (StickPattern p : best == null ? List.<StickPattern>of() : best) master.program.add(p);
    boolean complete = master.solve(problem.demand, patience);
    atLeast = costs.from(bound.cost(bound.best()));
    if (debug) System.out.printf("  greedy %d lp %.4f complete %s cols %d left %.3f%n", cost, bound.best()/(double)bound.parts(1), complete, master.program.patterns.size(), patience.secondsLeft());
    offer(greedy.best(bound.bestWorth(), 20, atLeast, patience));
    if (debug) System.out.printf("  greedy2 %d left %.3f%n", cost, patience.secondsLeft());
    double step = Math.max(1, 0.0002 * atLeast);
    while (complete && atLeast < cost && !patience.isSpent()) {
      long cutoff = Math.min(cost, costs.from(atLeast + Math.max(1, (long) step)));
      StickProgram program = new StickProgram(problem, bound, i -> 2.0 * cost);
      int patterns = enumerate(cutoff, program);
      if (patterns < 0) {
        if (debug) System.out.printf("  too many patterns for %d%n", cutoff);
        break;
      }
      StickTree tree = new StickTree(program, costs, greedy);
      boolean ended = tree.search(cutoff, 1_000_000, patience);
      offer(tree.best());
      if (debug) System.out.printf("  cutoff %d of %d..%d patterns %d (%d) nodes %d ended %s best %d left %.3f%n", cutoff, atLeast, cost, patterns, master.program.patterns.size(), tree.nodes, ended, cost, patience.secondsLeft());
      if (!ended) {
        break;
      }
      atLeast = Math.min(cutoff, cost);
      step *= 2;
    }
    return problem.plan(best, atLeast);
  }

  private void offer(List<StickPattern> plan) {
    if (plan != null && problem.cost(plan) < cost) {
      best = plan;
      cost = problem.cost(plan);
    }
  }

  private int enumerate(long cutoff, StickProgram program) {
    long[] worth = bound.bestWorth();
    knapsack.fill(worth, problem.demand);
    long budget = bound.parts(costs.below(cutoff)) - bound.best();
    int[] count = {0};
    for (int k = 0; k < problem.stocks(); k++) {
      long left = Math.max(0, bound.left(k, knapsack));
      long least = knapsack.most(k) - (budget - left);
      if (left <= budget
          && !knapsack.each(
              k,
              least,
              pattern -> {
                program.add(pattern);
                return ++count[0] < MOST_PATTERNS;
              })) {
        return -1;
      }
    }
    return count[0];
  }
}
