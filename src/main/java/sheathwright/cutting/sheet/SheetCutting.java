package sheathwright.cutting.sheet;

import java.util.List;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;

/** Pieces out of whole sheets and offcuts by guillotine cuts of any number of stages. */
public final class SheetCutting {

  private SheetCutting() {}

  /**
   * Finds a plan that buys few new sheets, and a number of new sheets that no guillotine plan can
   * undercut. Of plans that buy equally many, one is taken that gives much to the offcuts and
   * leaves a large rectangle on the last sheet; the cuts of the others are few.
   *
   * <p>The plan is checked again by separate code. The same order gives the same plan unless
   * patience runs out. A piece is never given a quarter turn.
   *
   * @param patience how long the search may go on; the least plan takes a moment even when it is
   *     spent
   * @return the plan, with no sheets if no pieces are wanted
   * @throws CannotBeCutException if a piece fits neither a sheet nor an offcut, or fits only
   *     offcuts that other such pieces use up
   */
  public static SheetPlan plan(SheetOrder order, Patience patience) {
    if (order.pieces().isEmpty()) {
      return new SheetPlan(List.of(), 0, 0);
    }
    SheetTask task = new SheetTask(order);
    SheetSearch search = new SheetSearch(task, patience);
    SheetPlan plan = new SheetPlanning(order, task).plan(search.packed(), search.atLeast());
    SheetPlanCheck.check(order, plan);
    return plan;
  }
}
