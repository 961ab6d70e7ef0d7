package sheathwright.cutting.sheet;

import java.util.List;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;
import sheathwright.cutting.sheet.PatternSearch.Outcome;

/**
 * The search in its order: a packing by best fit, quick bounds, the bound over all patterns, a
 * longer time of packing again, and a search through the patterns for a plan at the bound or for
 * the proof that there is none. It stops as soon as packing and bound meet; every step ends by its
 * own count of work.
 */
final class SheetSearch {

  /**
   * The linear program keeps a square table of this side: 18 MB, double 72 MB. No list of SheetWork
   * has more than 179 kinds.
   */
  private static final int MOST_KINDS = 1_500;

  // Measured on our 32 lists and a fifth of the published class, 0.3 s each, 0.5 s above 60 pieces:
  // 47 of 54 proven, 4.6 s of CPU as it is, on a quieter machine than the others.
  // Half 45 proven, 5.2 s; double 45, 5.1 s.
  private static final int FIRST_REPACKINGS = 2_000;
  // Half 46 proven, 5.1 s; double 45, 5.5 s.
  private static final int MORE_REPACKINGS = 20_000;
  // SmallPatchesWork: the largest rests of 30 orders come to 15.51 sheets; half 15.42, 0.95 of the
  // turns; double 15.55, 1.09.
  private static final int POLISHING = 500;
  // HalfSheetWork: half one sheet less, 2 bounds lower, one higher, 1.065 of the
  // turns; all of it one sheet more, 1.027.
  private static final double SHARE_OF_PRICES = 0.5;

  private final SheetTask task;
  private final Patience patience;
  private final SheetRepacking repacking;
  private int atLeast;

  /**
   * @throws CannotBeCutException if pieces that fit only offcuts were not all packed
   */
  SheetSearch(SheetTask task, Patience patience) {
    this.task = task;
    this.patience = patience;
    atLeast = SheetAreaBound.of(task);
    repacking = new SheetRepacking(task);
    if (!repacking.isPacked()) {
      throw noOffcutLeft();
    }
    repacking.improve(FIRST_REPACKINGS, atLeast, patience);
    GuillotineBound bound = null;
    if (isOpen() && task.kinds().size() <= MOST_KINDS) {
      bound = GuillotineBound.of(task, repacking.newSheets(), patience.part(SHARE_OF_PRICES));
      atLeast = Math.max(atLeast, bound.atLeast());
    }
    if (isOpen()) {
      repacking.improve(MORE_REPACKINGS, atLeast, patience);
    }
    if (isOpen() && bound != null) {
      cover(bound);
    }
    repacking.polish(POLISHING, patience);
  }

  private CannotBeCutException noOffcutLeft() {
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      if (!task.stocks().get(SheetTask.NEW).holds(task.kinds().get(kind))) {
        return new CannotBeCutException(
            task.piecesOfKind(kind).get(0),
            "A piece fits only offcuts, and no plan was found that has one for each such piece.");
      }
    }
    throw new IllegalStateException("pieces that fit a sheet were not packed");
  }

  private boolean isOpen() {
    return atLeast < repacking.newSheets() && !patience.isSpent();
  }

  private void cover(GuillotineBound bound) {
    int sheets = atLeast;
    while (sheets < repacking.newSheets() && isOpen()) {
      SheetCovering covering = new SheetCovering(patience);
      Outcome outcome = covering.search(task, bound, sheets);
      if (outcome == Outcome.FOUND) {
        repacking.offer(covering.packed());
      } else if (outcome == Outcome.IMPOSSIBLE) {
        atLeast = sheets + 1;
      }
      sheets++;
    }
  }

  List<PackedSheet> packed() {
    return repacking.best();
  }

  int newSheets() {
    return repacking.newSheets();
  }

  int atLeast() {
    return atLeast;
  }
}
