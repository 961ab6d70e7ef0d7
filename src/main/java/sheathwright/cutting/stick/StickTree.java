package sheathwright.cutting.stick;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Columns;
import sheathwright.cutting.program.LinearProgram;

/**
 * Branch and bound over given patterns. The node that costs least comes first, among equal ones the
 * newest. A node is given up only when its bound in whole numbers says so.
 */
final class StickTree {

  // StickWork: half gives the same plans and one bound lower, 1.003 of the turns; double the same,
  // 0.999.
  private static final int NODES_BETWEEN_ROUNDINGS = 10;

  private final StickProgram program;
  private final StickProblem problem;
  private final LinearProgram simplex;
  private final Columns columns;
  private final StickCosts costs;
  private final StickGreedy greedy;
  private final StickBound bound;
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingLong(Node::cost)
              .thenComparing(Node::number, Comparator.reverseOrder()));
  private long top;
  private List<StickPattern> best;

  /** A bound on one column, on top of its parent's, and the columns that are of no use any more. */
  private record Node(
      Node parent, int column, boolean isLeast, int value, BitSet useless, long cost, int number) {}

  /** What the program costs at least under its present bounds, after so many steps at most. */
  @FunctionalInterface
  interface Costing {
    long atMost(int steps);
  }

  StickTree(StickProgram program, StickBound bound, StickCosts costs, StickGreedy greedy) {
    this.program = program;
    this.problem = program.problem;
    this.simplex = program.simplex;
    this.columns = program.columns;
    this.bound = bound;
    this.costs = costs;
    this.greedy = greedy;
  }

  /** The best plan found below the cutoff, or null. */
  List<StickPattern> best() {
    return best;
  }

  /**
   * Looks for a plan that costs less than the cutoff.
   *
   * @return no plan of these patterns costs less than this; the cost of the best plan found, or the
   *     cutoff if there is none, when the search came to its end
   */
  long search(long cutoff, int mostNodes, Patience patience) {
    top = costs.below(cutoff);
    long lost = cutoff;
    int number = 0;
    open.add(new Node(null, -1, false, 0, new BitSet(), 0, number));
    reset();
    simplex.primal();
    StickBranching branching = new StickBranching(program);
    for (int nodes = 0; !open.isEmpty() && open.peek().cost <= top; nodes++) {
      if (nodes == mostNodes || patience.isSpent()) {
        return Math.min(lost, open.peek().cost);
      }
      Node node = open.poll();
      apply(node);
      long cost = Math.max(node.cost, cost(enough()));
      if (cost <= top && !simplex.isOptimal()) {
        cost = Math.max(cost, cost(Double.POSITIVE_INFINITY));
      }
      if (cost > top) {
        continue;
      }
      if (!simplex.isOptimal()) {
        lost = Math.min(lost, cost);
        continue;
      }
      if (nodes % NODES_BETWEEN_ROUNDINGS == 0) {
        offer(rounded(StickBranching.WHOLE));
      }
      BitSet useless = (BitSet) node.useless.clone();
      program.addUseless(useless, bound.parts(top));
      drop(useless);
      StickBranching.Branch branch = branching.choose(this::tried, cost, top);
      if (branch == null) {
        lost = offer(rounded(0.5)) <= cost ? lost : Math.min(lost, cost);
      } else {
        int below = branch.below();
        open.add(
            new Node(node, branch.column(), false, below, useless, branch.costBelow(), ++number));
        open.add(
            new Node(
                node, branch.column(), true, below + 1, useless, branch.costAbove(), ++number));
      }
    }
    return Math.min(lost, best == null ? cutoff : problem.cost(best));
  }

  private long cost(double enough) {
    simplex.solve(enough);
    return certified();
  }

  private long tried(int steps) {
    simplex.solve(enough(), steps);
    return certified();
  }

  private long certified() {
    return costs.from(bound.cost(program.certified()));
  }

  /** A little above the top, so that the bound in whole numbers is above it too. */
  private double enough() {
    return top + 1e-4 * bound.unitCost();
  }

  /** Completes the sticks to a plan, keeps it if it is the best, and returns its cost. */
  private long offer(List<StickPattern> sticks) {
    List<StickPattern> plan = greedy.complete(sticks, bound.worth(simplex.prices()));
    if (plan == null) {
      return Long.MAX_VALUE;
    }
    long cost = problem.cost(plan);
    if (cost <= top) {
      best = plan;
      top = costs.below(cost);
    }
    return cost;
  }

  /** Every pattern as often as its level says, rounded down after this much is added. */
  private List<StickPattern> rounded(double added) {
    List<StickPattern> sticks = new ArrayList<>();
    for (int p = 0; p < program.patterns.size(); p++) {
      int times = (int) Math.floor(simplex.level(program.column(p)) + added);
      for (int n = 0; n < times; n++) {
        sticks.add(program.patterns.get(p));
      }
    }
    return sticks;
  }

  private void reset() {
    columns.free();
    for (int k = 0; k < problem.stocks(); k++) {
      if (problem.price[k] > 0) {
        int column = program.stockColumn(k);
        columns.setHigh(column, Math.min(problem.most[k], top / problem.price[k]));
      }
    }
  }

  private void drop(BitSet useless) {
    useless.stream().forEach(column -> columns.setHigh(column, 0));
  }

  private void apply(Node leaf) {
    reset();
    drop(leaf.useless);
    for (Node node = leaf; node.parent != null; node = node.parent) {
      if (node.isLeast) {
        columns.setLow(node.column, Math.max(columns.low(node.column), node.value));
      } else {
        columns.setHigh(node.column, Math.min(columns.high(node.column), node.value));
      }
    }
  }
}
