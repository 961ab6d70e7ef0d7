package sheathwright.cutting.stick;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The same problem written plainly for a general solver: flow along a stick from mark to mark, one
 * arc for each piece at each place that longer pieces can lead to, one return arc for each stock
 * (arc flow, Valério de Carvalho 1999, from memory). It is the model that anybody can write down
 * whole without a search of his own, and its relaxation is as strong as that over patterns.
 */
final class StickArcFlow {

  /** A larger model is not finished within seconds, and takes long only to be set up. */
  private static final int MOST_ARCS = 300_000;

  private final MPSolver solver;
  private final StickProblem problem;
  private final NavigableSet<Long> marks = new TreeSet<>(List.of(0L));
  private final Map<Long, MPConstraint> balance = new HashMap<>();

  /** What the solver found: a negative cost if it found nothing. */
  record Found(long cost, boolean isProven) {}

  private StickArcFlow(MPSolver solver, StickProblem problem) {
    this.solver = solver;
    this.problem = problem;
  }

  static Found solve(StickOrder order, double seconds) {
    Loader.loadNativeLibraries();
    MPSolver solver = MPSolver.createSolver("SCIP");
    try {
      return new StickArcFlow(solver, StickProblem.of(order)).solve(seconds);
    } finally {
      solver.delete(); // left to the collector, it has brought the process down
    }
  }

  private Found solve(double seconds) {
    long end = System.nanoTime() + (long) (seconds * 1e9);
    if (!build()) {
      return new Found(-1, false);
    }
    MPSolverParameters exact = new MPSolverParameters();
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    solver.setTimeLimit(Math.max(1, (end - System.nanoTime()) / 1_000_000));
    MPSolver.ResultStatus status = solver.solve(exact);
    boolean found =
        status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
    return new Found(
        found ? Math.round(solver.objective().value()) : -1,
        status == MPSolver.ResultStatus.OPTIMAL);
  }

  private boolean build() {
    long longest = 0;
    for (long room : problem.room) {
      longest = Math.max(longest, room);
      marks.add(room);
    }
    int arcs = 0;
    NavigableSet<Long> reached = new TreeSet<>(List.of(0L));
    for (int i = 0; i < problem.lengths(); i++) {
      MPConstraint demand = solver.makeConstraint(problem.demand[i], Double.POSITIVE_INFINITY, "");
      for (long from : List.copyOf(reached)) {
        long to = from;
        for (int n = 0; n < problem.demand[i] && to + problem.length[i] <= longest; n++) {
          to += problem.length[i];
          reached.add(to);
        }
      }
      for (long from : reached) {
        if (from + problem.length[i] <= longest && ++arcs <= MOST_ARCS) {
          demand.setCoefficient(arc(from, from + problem.length[i], problem.demand[i]), 1);
        }
      }
      if (arcs > MOST_ARCS) {
        return false;
      }
    }
    marks.addAll(reached);
    long before = 0;
    for (long mark : marks.tailSet(0L, false)) {
      arc(before, mark, problem.pieces());
      before = mark;
    }
    MPObjective cost = solver.objective();
    cost.setMinimization();
    for (int k = 0; k < problem.stocks(); k++) {
      cost.setCoefficient(arc(problem.room[k], 0, problem.most[k]), problem.price[k]);
    }
    return true;
  }

  private MPVariable arc(long from, long to, int most) {
    MPVariable flow = solver.makeIntVar(0, most, "");
    balance(from).setCoefficient(flow, -1);
    balance(to).setCoefficient(flow, 1);
    return flow;
  }

  private MPConstraint balance(long mark) {
    return balance.computeIfAbsent(mark, at -> solver.makeConstraint(0, 0, ""));
  }
}
