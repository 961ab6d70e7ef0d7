package sheathwright.cutting.stick;

import java.util.Arrays;
import java.util.List;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;

/**
 * The whole search: quick plans, the linear program for a bound, better plans from its prices, then
 * the proof. For the proof the cost that is allowed rises step by step from the bound: at each step
 * all patterns are made that a plan so cheap could use, and a tree is searched to its end.
 */
final class StickSearch {

  // StickWork with 10 careful rounds: half 4 plans cheaper, 3 dearer, 3 bounds lower, 0.993 of the
  // turns; double 2 cheaper, 1 dearer, 1 bound higher, 0.986.
  private static final int QUICK_ROUNDS = 10;
  // StickWork: double 2 plans dearer, 2 bounds lower, 1.08 of the turns; half was not measured.
  private static final int CAREFUL_ROUNDS = 5;
  // StickWork: half and double give the same plans and bounds in as many turns.
  private static final int MOST_PATTERNS = 30_000;
  // Not tuned: ends a search that patience does not. StickWork: not reached at half.
  private static final int MOST_NODES = 200_000;
  // Where only a plan is looked for, no proof. StickWork: half one bound higher, 1.001 of the
  // turns;
  // double one bound lower, 0.991; the same plans.
  private static final int MOST_NODES_FOR_A_PLAN = 100;
  // Our 46 lists and 14 of hard28, 0.2 s each: 35 proven, 5.4 s of CPU; half 35, 5.3 s; double 35,
  // 5.5 s.
  private static final double FIRST_STEP = 0.0002;
  // StickWork: half and double give the same plans and bounds in as many turns.
  private static final double LEAST_STEP = FIRST_STEP / 4;
  // ManyLengthsWork: half and double the same plans and bounds, 0.998 and 0.997 of the turns.
  private static final int MANY_LENGTHS = 250;
  // Sum of the bounds of three invented lists of 408 to 485 lengths after 1,000 questions each:
  // double 797,726; four times 793,619; this 802,590; the plans are the same, 814,450, none proven.
  // ManyLengthsWork, whose lists end before groups can matter: double and four times the same.
  private static final int GROUPS = 60;
  // Of those three lists with 120 groups: half 793,619; double 807,076; this 797,726. Of one of
  // three
  // lists for which 60 million turns are too few, double makes the plan dearer.
  private static final double SHARE_OF_GROUPS = 0.3;
  // StickWork: half 3 plans dearer, 4 bounds lower; all of it 1 plan dearer, 2 bounds higher.
  private static final double SHARE_OF_PRICES = 0.5;

  private final StickProblem problem;
  private final StickBound bound;
  private final StickKnapsack knapsack;
  private final StickGreedy greedy;
  private final Patience patience;
  private List<StickPattern> best;
  private long cost;
  private long atLeast;
  private StickCosts costs;

  StickSearch(StickProblem problem, Patience patience) {
    this.problem = problem;
    this.patience = patience;
    this.bound = new StickBound(problem);
    this.knapsack = new StickKnapsack(problem);
    this.greedy = new StickGreedy(problem, knapsack, patience);
    this.cost = bound.moreThanAnyPlan();
  }

  /**
   * The best plan found.
   *
   * @throws CannotBeCutException if there is no plan, or none was found
   */
  StickPlan plan() {
    offer(greedy.best(problem.length, false, QUICK_ROUNDS, 0));
    costs = new StickCosts(problem.price, cost);
    learn(bound.worthByLength());
    if (problem.lengths() > MANY_LENGTHS) {
      learnFromGroups();
    }
    StickMaster master = new StickMaster(problem, bound, knapsack, patience.part(SHARE_OF_PRICES));
    if (best != null) {
      best.forEach(master.program::add);
    }
    boolean priced = master.solve();
    atLeast = costs.from(bound.cost(bound.best()));
    offer(greedy.best(bound.worth(master.program.simplex.prices()), true, CAREFUL_ROUNDS, atLeast));
    if (atLeast < cost) {
      search(master.program.patterns, cost, MOST_NODES_FOR_A_PLAN);
    }
    if (priced) {
      prove();
    }
    if (best == null) {
      throw new CannotBeCutException(
          -1,
          atLeast >= cost ? "the stock is not enough" : "no way to make the stock do was found");
    }
    return problem.plan(best, atLeast, bound.certificate());
  }

  /** A first bound where the whole program may take too long. */
  private void learnFromGroups() {
    int together = (problem.lengths() + GROUPS - 1) / GROUPS;
    StickProblem fewer = problem.grouped(together);
    StickBound prices = new StickBound(fewer);
    new StickMaster(fewer, prices, new StickKnapsack(fewer), patience.part(SHARE_OF_GROUPS))
        .solve();
    long[] worth = new long[problem.lengths()];
    Arrays.setAll(worth, i -> prices.bestWorth()[i / together]);
    learn(worth);
  }

  private void learn(long[] worth) {
    knapsack.fill(worth, problem.demand);
    bound.learn(worth, knapsack);
  }

  private void prove() {
    StickEnumeration enumeration = new StickEnumeration(problem, bound, knapsack);
    double step = FIRST_STEP * atLeast;
    while (atLeast < cost && !patience.isSpent()) {
      // A step that would leave less than itself goes all the way.
      long cutoff =
          atLeast + 2 * step >= cost
              ? cost
              : Math.min(cost, costs.from(atLeast + Math.max(1, (long) step)));
      long budget = enumeration.budget(costs.below(cutoff));
      List<StickPattern> patterns = enumeration.within(budget, MOST_PATTERNS);
      if (patterns == null && step < LEAST_STEP * atLeast) {
        return;
      }
      if (patterns == null) {
        searchTheBest(enumeration, budget);
        step /= 4;
        continue;
      }
      long proven = search(patterns, cutoff, MOST_NODES);
      atLeast = Math.max(atLeast, proven);
      if (proven < Math.min(cutoff, cost)) {
        return;
      }
      step *= 2;
    }
  }

  /** Where there are too many patterns for a proof, those that waste least may make a plan. */
  private void searchTheBest(StickEnumeration enumeration, long budget) {
    List<StickPattern> patterns = null;
    for (long less = budget / 2; patterns == null && less > 0; less /= 2) {
      patterns = enumeration.within(less, MOST_PATTERNS);
    }
    if (patterns != null) {
      search(patterns, cost, MOST_NODES_FOR_A_PLAN);
    }
  }

  private long search(List<StickPattern> patterns, long cutoff, int mostNodes) {
    StickProgram program = new StickProgram(problem, bound, piece -> 2.0 * cost, patience);
    patterns.forEach(program::add);
    StickTree tree = new StickTree(program, bound, costs, greedy);
    long proven = tree.search(cutoff, mostNodes, patience);
    offer(tree.best());
    return proven;
  }

  private void offer(List<StickPattern> plan) {
    if (plan != null && problem.cost(plan) < cost) {
      best = plan;
      cost = problem.cost(plan);
    }
  }
}
