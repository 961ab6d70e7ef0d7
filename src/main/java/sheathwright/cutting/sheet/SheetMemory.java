package sheathwright.cutting.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import sheathwright.cutting.CountedPatience;

/**
 * Plans that were found with a counted patience. The same order with as much patience left gives
 * the same plan and leaves as much behind, so that it is not sought twice: a job is worked out anew
 * at each step of its life, and after each change, mostly with the same sheets to cut.
 */
final class SheetMemory {

  /** No search rests on it: the decks of some open jobs, each with its planes' patches. */
  private static final int MOST = 256;

  /**
   * No search rests on it: longer lists are not kept, so that all kept plans take a few megabytes.
   */
  private static final int MOST_PIECES = 500;

  private static final Map<Asked, Found> KEPT =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, Found> eldest) {
          return size() > MOST;
        }
      };

  private record Asked(SheetOrder order, int patience) {}

  private record Found(SheetPlan plan, int patienceLeft) {}

  private SheetMemory() {}

  /** The plan as it was found before, or as it is found now. */
  static SheetPlan plan(SheetOrder order, CountedPatience patience, Supplier<SheetPlan> search) {
    Asked asked = new Asked(order, patience.left());
    Found found;
    synchronized (KEPT) {
      found = KEPT.get(asked);
    }
    if (found != null) {
      patience.goOnAt(found.patienceLeft());
      return found.plan();
    }
    SheetPlan plan = search.get();
    if (order.pieces().size() <= MOST_PIECES) {
      synchronized (KEPT) {
        KEPT.put(asked, new Found(plan, patience.left()));
      }
    }
    return plan;
  }
}
