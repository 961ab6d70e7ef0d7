package sheathwright.cutting.stick;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;
import sheathwright.cutting.program.Columns;
import sheathwright.cutting.program.LinearProgram;

/**
 * Chooses what the tree branches on: the sticks of a stock first, then how often two lengths come
 * from one stick (after Ryan and Foster 1981), then single patterns. Among several it takes the one
 * whose two branches raise the bound most, which it tries out while it has little experience of
 * them (reliability branching, Achterberg, Koch and Martin 2005).
 */
final class StickBranching {

  /**
   * A level no farther from a whole number is whole: the program errs by 1e-7. StickWork: half and
   * double the same plans and bounds, 1.001 and 1.000 of the turns.
   */
  static final double WHOLE = 1e-5;

  /**
   * No gain is less, so that a product of two tells branches apart. StickWork: half and double the
   * same plans and bounds in as many turns.
   */
  private static final double SMALL = 1e-6;

  // Each is one more row of the program. StickWork: half and double the same plans and bounds in as
  // many turns.
  private static final int MOST_COUNTS = 300;
  // StickWork: half 2 bounds lower, 2 higher, 0.977 of the turns on what is proven; double 2 lower,
  // 2 higher, 1.016; the same plans.
  private static final int TRIES_ENOUGH = 4;
  // Of 60 lists in 0.2 s each (StickSearch): half 35 proven, 5.3 s; double 35, 5.4 s; this 35, 5.4
  // s.
  private static final int MOST_TRIED = 8;
  // Half 35 proven, 5.5 s; double 35, 5.5 s.
  private static final int STEPS_OF_A_TRY = 50;

  private final StickProgram program;
  private final LinearProgram simplex;
  private final Columns columns;
  private final Experience down;
  private final Experience up;

  /** A column to branch on, between two whole numbers, and what either branch costs at least. */
  record Branch(int column, int below, long costBelow, long costAbove) {}

  /** By how much a branch of a column has raised the cost for each unit moved. */
  private static final class Experience {
    final double[] sum;
    final int[] tries;

    Experience(int columns) {
      sum = new double[columns];
      tries = new int[columns];
    }

    double gain(int column, double move) {
      return tries[column] == 0 ? SMALL : move * sum[column] / tries[column];
    }

    void learn(int column, double move, double gain) {
      sum[column] += gain / move;
      tries[column]++;
    }
  }

  StickBranching(StickProgram program) {
    this.program = program;
    this.simplex = program.simplex;
    this.columns = program.columns;
    this.down = new Experience(columns.count() + MOST_COUNTS);
    this.up = new Experience(columns.count() + MOST_COUNTS);
  }

  /**
   * Chooses a branch at the present levels.
   *
   * @param costs makes a bound of the program's present prices and bounds
   * @param parent cost of this node at least
   * @param top branches that cost more than this need not be searched
   * @return the branch, or null if every level is whole
   */
  Branch choose(StickTree.Costing costs, long parent, long top) {
    int[] candidates = candidates();
    double[] level = Arrays.stream(candidates).mapToDouble(simplex::level).toArray();
    double cost = simplex.cost();
    Branch best = null;
    double highest = -1;
    int tried = 0;
    for (int i : ranked(candidates, level)) {
      int column = candidates[i];
      int below = (int) Math.floor(level[i]);
      double part = level[i] - below;
      double gainBelow = down.gain(column, part);
      double gainAbove = up.gain(column, 1 - part);
      long costBelow = parent;
      long costAbove = parent;
      if (Math.min(down.tries[column], up.tries[column]) < TRIES_ENOUGH && tried < MOST_TRIED) {
        tried++;
        double high = columns.high(column);
        columns.setHigh(column, below);
        costBelow = Math.max(parent, costs.atMost(STEPS_OF_A_TRY));
        gainBelow = gain(cost, costBelow, top);
        columns.setHigh(column, high);
        double low = columns.low(column);
        columns.setLow(column, below + 1);
        costAbove = Math.max(parent, costs.atMost(STEPS_OF_A_TRY));
        gainAbove = gain(cost, costAbove, top);
        columns.setLow(column, low);
        down.learn(column, part, gainBelow);
        up.learn(column, 1 - part, gainAbove);
      }
      double score = Math.max(gainBelow, SMALL) * Math.max(gainAbove, SMALL);
      if (score > highest) {
        highest = score;
        best = new Branch(column, below, costBelow, costAbove);
      }
      if (Math.max(costBelow, costAbove) > top) {
        return new Branch(column, below, costBelow, costAbove);
      }
    }
    return best;
  }

  private double gain(double cost, long atLeast, long top) {
    return Math.max(0, atLeast > top ? top + 1 - cost : simplex.cost() - cost);
  }

  private int[] candidates() {
    int[] stocks = uneven(IntStream.range(0, program.problem.stocks()).map(program::stockColumn));
    if (stocks.length > 0) {
      return stocks;
    }
    int[] counts = uneven(program.countColumns());
    if (counts.length > 0) {
      return counts;
    }
    StickCount next = program.countColumns().count() < MOST_COUNTS ? mostUnevenCount() : null;
    return next != null
        ? new int[] {program.count(next)}
        : uneven(IntStream.range(0, program.patterns.size()).map(program::column));
  }

  private int[] uneven(IntStream some) {
    return some.filter(column -> distance(simplex.level(column)) > WHOLE).toArray();
  }

  private static double distance(double level) {
    return Math.abs(level - Math.rint(level));
  }

  private int[] ranked(int[] candidates, double[] level) {
    return IntStream.range(0, candidates.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -expected(candidates[i], level[i])))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private double expected(int column, double level) {
    double part = level - Math.floor(level);
    return down.tries[column] == 0
        ? part * (1 - part)
        : Math.max(down.gain(column, part), SMALL) * Math.max(up.gain(column, 1 - part), SMALL);
  }

  private StickCount mostUnevenCount() {
    Map<StickCount, Double> sums = new LinkedHashMap<>();
    for (int p = 0; p < program.patterns.size(); p++) {
      double level = simplex.level(program.column(p));
      if (level > WHOLE) {
        addCounts(sums, program.patterns.get(p), level);
      }
    }
    StickCount most = null;
    double furthest = 10 * WHOLE;
    for (Map.Entry<StickCount, Double> sum : sums.entrySet()) {
      if (distance(sum.getValue()) > furthest + SMALL) {
        furthest = distance(sum.getValue());
        most = sum.getKey();
      }
    }
    return most;
  }

  private void addCounts(Map<StickCount, Double> sums, StickPattern pattern, double level) {
    int[] piece = pattern.piece();
    for (int i = 0; i < piece.length; i++) {
      for (int n = 1; n <= pattern.count()[i] && program.problem.demand[piece[i]] > 1; n++) {
        sums.merge(new StickCount(piece[i], n, piece[i], n), level, Double::sum);
      }
      for (int j = i + 1; j < piece.length; j++) {
        sums.merge(new StickCount(piece[i], 1, piece[j], 1), level, Double::sum);
      }
    }
  }
}
