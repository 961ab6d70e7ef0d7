package sheathwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;

/** Branch and bound over given patterns: on the sticks of each stock and of each pattern. */
final class StickTree {

  private static final double WHOLE = 1e-5;
  private static final int MOST_STEPS = 5_000;

  private final StickProgram program;
  private final StickProblem problem;
  private final StickSimplex simplex;
  private final StickBound bound;
  private final StickCosts costs;
  private final StickGreedy greedy;
  private long top;
  private List<StickPattern> best;
  int nodes;
  long steps;

  private record Node(Node parent, int column, boolean least, int value, long parts, int number) {}

  StickTree(StickProgram program, StickCosts costs, StickGreedy greedy) {
    this.program = program;
    this.problem = program.problem;
    this.simplex = program.simplex;
    this.bound = program.bound;
    this.costs = costs;
    this.greedy = greedy;
  }

  /** The best plan found below the cutoff, or null. */
  List<StickPattern> best() {
    return best;
  }

  private double[][] gain;
  private int[][] tried;

  boolean search(long cutoff, int mostNodes, Patience patience) {
    best = null;
    top = costs.below(cutoff);
    gain = new double[2][simplex.columns];
    tried = new int[2][simplex.columns];
    PriorityQueue<Node> open =
        new PriorityQueue<>(
            (one, other) ->
                one.parts != other.parts
                    ? Long.compare(one.parts, other.parts)
                    : Integer.compare(other.number, one.number));
    open.add(new Node(null, -1, false, 0, 0, 0));
    boolean complete = true;
    int number = 0;
    nodes = 0;
    reset();
    simplex.primal(100_000);
    while (!open.isEmpty()) {
      Node node = open.poll();
      if (node.parts > top) {
        continue;
      }
      if (nodes++ >= mostNodes || patience.isSpent()) {
        complete = false;
        break;
      }
      apply(node);
      boolean ended = simplex.solve(enough(), MOST_STEPS);
      long parts = Math.max(node.parts, costs.from(bound.cost(program.certified())));
      if (parts > top) {
        continue;
      }
      if (!ended) {
        if (StickSearch.debug) System.out.println("   lost node " + nodes + " cost " + simplex.cost() + " top " + top + " bound " + program.certified() / (double) bound.parts(1));
        complete = false;
        continue;
      }
      int[] fractional = fractional();
      if (fractional.length == 0) {
        boolean o = offer(greedy.complete(rounded(0.5), bound.worth(simplex.prices)), parts);
        if (!o && StickSearch.debug) for (int p = 0; p < simplex.columns; p++) if (simplex.level(p) > 1e-9) System.out.println(p + " " + simplex.level(p)+ java.util.Arrays.toString(simplex.index[p])+java.util.Arrays.toString(simplex.value[p]));
        if (!o && StickSearch.debug) System.out.println("   lost leaf " + nodes + " cost " + simplex.cost() + " top " + top + " bound " + program.certified() / (double) bound.parts(1)+ " parts " + parts);
        complete &= o;
        continue;
      }
      double[] level = new double[fractional.length];
      for (int i = 0; i < level.length; i++) level[i] = simplex.level(fractional[i]);
      if (nodes % 10 == 1) {
        offer(greedy.complete(rounded(1 - 1e-4), bound.worth(simplex.prices)), parts);
        if (parts > top) {
          continue;
        }
      }
      double cost = simplex.cost();
      int[] order = ranked(fractional, level);
      int bestC = -1; double bestScore = -1; long[] bestParts = null; double bestLevel = 0;
      int looked = 0;
      for (int o : order) {
        int c = fractional[o];
        int floor = (int) Math.floor(level[o]);
        double f = level[o] - floor;
        double[] g = {0, 0};
        long[] pp = {parts, parts};
        for (int side = 0; side < 2; side++) {
          double part = side == 0 ? f : 1 - f;
          if (tried[side][c] >= 4 || looked >= 8 ) {
            g[side] = tried[side][c] == 0 ? unit(c) * part : gain[side][c] / tried[side][c] * part;
          } else {
            double low = simplex.low[c], high = simplex.high[c];
            if (side == 0) simplex.high[c] = floor; else simplex.low[c] = floor + 1;
            simplex.solve(enough(), 50);
            g[side] = Math.max(0, simplex.cost() - cost);
            pp[side] = Math.max(parts, costs.from(bound.cost(program.certified())));
            if (pp[side] > top) g[side] = Math.max(g[side], 1e3 + top + 1 - cost);
            else { gain[side][c] += g[side] / part; tried[side][c]++; }
            simplex.low[c] = low; simplex.high[c] = high;
            if (side == 1) looked++;
          }
        }
        double score = Math.max(g[0], 1e-6) * Math.max(g[1], 1e-6);
        if (score > bestScore) { bestScore = score; bestC = c; bestParts = pp; bestLevel = level[o]; }
        if (pp[0] > top || pp[1] > top) break;
      }
      int floor = (int) Math.floor(bestLevel);
      if (bestParts[0] <= top) open.add(new Node(node, bestC, false, floor, bestParts[0], ++number));
      if (bestParts[1] <= top) open.add(new Node(node, bestC, true, floor + 1, bestParts[1], ++number));
    }
    return complete;
  }

  private double unit(int column) { return column < problem.stocks() ? 1 : 1e-3; }

  private int[] ranked(int[] fractional, double[] level) {
    double[] score = new double[level.length];
    Integer[] order = new Integer[level.length];
    for (int i = 0; i < level.length; i++) {
      order[i] = i;
      int c = fractional[i];
      double f = level[i] - Math.floor(level[i]);
      double down = tried[0][c] == 0 ? unit(c) * f : gain[0][c] / tried[0][c] * f;
      double up = tried[1][c] == 0 ? unit(c) * (1 - f) : gain[1][c] / tried[1][c] * (1 - f);
      score[i] = Math.max(down, 1e-6) * Math.max(up, 1e-6);
    }
    java.util.Arrays.sort(order, (a, b) -> score[a] != score[b] ? Double.compare(score[b], score[a]) : Integer.compare(a, b));
    return java.util.Arrays.stream(order).mapToInt(x -> x).toArray();
  }

  private double enough() {
    return top + 1e-5 * bound.unitCost();
  }

  private boolean offer(List<StickPattern> plan, long parts) {
    if (plan == null) {
      return false;
    }
    long cost = problem.cost(plan);
    if (cost <= top) {
      best = plan;
      top = costs.below(cost);
    }
    return cost <= parts;
  }

  /** Patterns as often as their levels say, rounded down but for this much. */
  private List<StickPattern> rounded(double up) {
    List<StickPattern> sticks = new ArrayList<>();
    for (int p = 0; p < program.patterns.size(); p++) {
      int times = (int) Math.floor(simplex.level(program.column(p)) + 1 - up);
      for (int n = 0; n < times; n++) {
        sticks.add(program.patterns.get(p));
      }
    }
    return sticks;
  }

  private void reset() {
    for (int k = 0; k < problem.stocks(); k++) {
      simplex.low[program.stockColumn(k)] = 0;
      simplex.high[program.stockColumn(k)] = most(k);
    }
    for (int p = 0; p < program.patterns.size(); p++) {
      simplex.low[program.column(p)] = 0;
      simplex.high[program.column(p)] = program.most(program.patterns.get(p));
    }
  }

  private int most(int stock) {
    long price = problem.price[stock];
    return price == 0 ? problem.most[stock] : (int) Math.min(problem.most[stock], top / price);
  }

  private void apply(Node leaf) {
    reset();
    for (Node node = leaf; node.parent != null; node = node.parent) {
      if (node.least) {
        simplex.low[node.column] = Math.max(simplex.low[node.column], node.value);
      } else {
        simplex.high[node.column] = Math.min(simplex.high[node.column], node.value);
      }
    }
  }

  private int[] fractional() {
    int[] found = new int[simplex.columns];
    int n = 0;
    for (int k = 0; k < problem.stocks(); k++) {
      if (distance(simplex.level(program.stockColumn(k))) > WHOLE) found[n++] = program.stockColumn(k);
    }
    if (n > 0 && Boolean.getBoolean("yfirst")) return java.util.Arrays.copyOf(found, n);
    for (int p = 0; p < program.patterns.size(); p++) {
      if (distance(simplex.level(program.column(p))) > WHOLE) found[n++] = program.column(p);
    }
    return java.util.Arrays.copyOf(found, n);
  }

  private static double distance(double level) {
    return Math.abs(level - Math.rint(level));
  }
}
