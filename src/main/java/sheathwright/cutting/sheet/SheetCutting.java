package sheathwright.cutting.sheet;

import java.util.Collections;
import java.util.List;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.CountedPatience;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;

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
    return patience instanceof CountedPatience counted
        ? SheetMemory.plan(order, counted, () -> search(order, counted))
        : search(order, patience);
  }

  private static SheetPlan search(SheetOrder order, Patience patience) {
    SheetTask task = new SheetTask(order);
    SheetSearch search = new SheetSearch(task, patience);
    SheetPlan plan = new SheetPlanning(order, task).plan(search.packed(), search.atLeast());
    SheetPlanCheck.check(order, plan);
    return plan;
  }

  /**
   * What each piece and each offcut is worth, so that no guillotine plan buys fewer new sheets than
   * these add up to. The plan itself may be proven beyond that, by a search.
   *
   * @param enough the search for worths stops when they add up to so many sheets
   */
  public static Certificate certificate(SheetOrder order, int enough, Patience patience) {
    if (order.pieces().isEmpty()) {
      return new Certificate(1, List.of(), Collections.nCopies(order.offcuts().size(), 0L), 0);
    }
    return GuillotineBound.of(new SheetTask(order), enough, patience).certificate(order);
  }
}
