package sheathwright.cutting.stick;

import java.util.List;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;

/**
 * Sticks cut out of several stock lengths at the least cost.
 *
 * <p>Exact for lists of a few hundred pieces of usual kinds; where the work or the patience ends
 * before the proof, the best plan found, with a true lower bound beside it. Does not cover knots
 * and other faults, joining of short pieces, or the order of the cuts.
 */
public final class StickCutting {

  private StickCutting() {}

  /**
   * The cheapest way to cut an order. The search counts its own work, so that the same order gives
   * the same plan as long as patience does not run out.
   *
   * @param order stock and pieces in whole numbers of one unit
   * @param patience how long the search may go on; a plan comes even if it has run out
   * @return a plan, checked against the order, with its cost and what any plan costs at least
   * @throws CannotBeCutException if a piece is longer than every stick, naming the piece, or if no
   *     way was found in which limited stock is enough
   * @see "Gilmore and Gomory 1961 for the linear program of patterns, Farley 1990 for its bound,
   *     Ryan and Foster 1981 for branching on pairs; all three from memory"
   */
  public static StickPlan plan(StickOrder order, Patience patience) {
    StickProblem problem = StickProblem.of(order);
    StickPlan plan =
        problem.lengths() == 0
            ? problem.plan(List.of(), 0, new StickBound(problem).certificate())
            : new StickSearch(problem, patience).plan();
    return StickPlanCheck.checked(order, plan);
  }
}
