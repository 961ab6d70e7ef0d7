package sheathwright.cutting;

import java.util.ArrayList;
import java.util.List;

/** Sticks cut out of several stock lengths at the least cost. */
public final class StickCutting {

  private StickCutting() {}

  public static StickPlan plan(StickOrder order, Patience patience) {
    StickProblem problem = StickProblem.of(order);
    if (problem.lengths() == 0) {
      return StickPlanCheck.checked(order, new StickPlan(List.of(), 0, 0));
    }
    return StickPlanCheck.checked(order, new StickSearch(problem).plan(patience));
  }
}
