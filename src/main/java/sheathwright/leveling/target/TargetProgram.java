package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;

/**
 * A small linear program, handed to the solver library. Rows may be added and it may be solved
 * again; the rows that decided an optimum may be held for what is minimized next.
 */
final class TargetProgram {

  /**
   * A shadow price, or what the bounds lack, below this is none: the library's arithmetic leaves
   * noise of 1e-12. Half and double give the same 240 planes.
   */
  static final double NOISE = 1e-9;

  private final double[] lower;
  private final double[] upper;
  private final List<TargetRow> free = new ArrayList<>();
  private final List<TargetRow> held = new ArrayList<>();

  /**
   * An optimum.
   *
   * @param values of the variables
   * @param deciding the rows without which it would be better
   */
  record Optimum(double[] values, List<TargetRow> deciding) {}

  /** A program whose variables may be anything from minus to plus so much. */
  TargetProgram(int variables, double reach) {
    lower = new double[variables];
    upper = new double[variables];
    Arrays.fill(lower, -reach);
    Arrays.fill(upper, reach);
  }

  /** Lets a variable not fall below zero. */
  void keepPositive(int variable) {
    lower[variable] = 0;
  }

  /** Adds a row. */
  void add(TargetRow row) {
    free.add(row);
  }

  /** Whether the row is part of it. */
  boolean has(TargetRow row) {
    return free.contains(row) || held.contains(row);
  }

  /** Whether the row decided something. */
  boolean isHeld(TargetRow row) {
    return held.contains(row);
  }

  /** Every row, the held ones first. */
  List<TargetRow> rows() {
    List<TargetRow> rows = new ArrayList<>(held);
    rows.addAll(free);
    return rows;
  }

  /** From now on these rows are met exactly. */
  void hold(List<TargetRow> rows) {
    free.removeAll(rows);
    held.addAll(rows);
  }

  /** The least value of an objective, or nothing if no values meet all rows. */
  Optional<Optimum> least(double... objective) {
    LinearSolver.Builder builder = LinearSolver.newBuilder(objective);
    for (TargetRow row : free) {
      double[] negative = Arrays.stream(row.factors()).map(factor -> -factor).toArray();
      builder.inequality(-row.least(), negative);
    }
    held.forEach(row -> builder.equality(row.least(), row.factors()));
    builder.lower(lower.clone()).upper(upper.clone());
    Optimisation.Result result = builder.build().solve();
    if (!result.getState().isOptimal()) {
      return Optional.empty();
    }
    Access1D<?> prices = result.getDualSolution().orElseThrow().get();
    List<TargetRow> deciding = new ArrayList<>();
    for (int i = 0; i < free.size(); i++) { // the library lists inequalities before equations
      if (Math.abs(prices.doubleValue(i)) > NOISE) {
        deciding.add(free.get(i));
      }
    }
    double[] values = new double[objective.length];
    Arrays.setAll(values, result::doubleValue);
    return Optional.of(new Optimum(values, deciding));
  }
}
