package sheathwright.cutting.stick;

import java.util.List;
import java.util.Optional;
import sheathwright.cutting.program.WrongPlanException;

/**
 * Checks a plan against its order from the definitions alone. Shares nothing with the search: it
 * works on the caller's lengths, kerf and trim, never on the reduced ones.
 */
public final class StickPlanCheck {

  private StickPlanCheck() {}

  /**
   * Returns the plan.
   *
   * @throws IllegalStateException if the plan does not do what the order asks, or its cost is wrong
   */
  static StickPlan checked(StickOrder order, StickPlan plan) {
    fault(order, plan)
        .ifPresent(
            fault -> {
              throw new IllegalStateException("the plan is wrong: " + fault);
            });
    return plan;
  }

  /** What is wrong with a plan; empty if it does what the order asks, at the cost that it says. */
  public static Optional<String> fault(StickOrder order, StickPlan plan) {
    try {
      check(order, plan);
      return Optional.empty();
    } catch (WrongPlanException wrong) {
      return Optional.of(wrong.getMessage());
    }
  }

  private static void check(StickOrder order, StickPlan plan) {
    int[] cut = new int[order.pieces().size()];
    int[] used = new int[order.stock().size()];
    long cost = 0;
    for (CutStick stick : plan.sticks()) {
      StockLength stock = order.stock().get(stick.stock());
      used[stick.stock()]++;
      cost += stock.price();
      stick.pieces().forEach(piece -> cut[piece]++);
      require(!stick.pieces().isEmpty(), "a stick is cut into nothing");
      require(isLongestFirst(order, stick.pieces()), "a shorter piece comes first");
      require(
          needed(order, stick.pieces()) <= stock.length(),
          "the pieces " + stick.pieces() + " do not fit stock " + stick.stock());
    }
    for (int i = 0; i < cut.length; i++) {
      require(
          cut[i] == order.pieces().get(i).count(), "piece " + i + " is cut " + cut[i] + " times");
    }
    for (int i = 0; i < used.length; i++) {
      require(used[i] <= order.stock().get(i).available(), "stock " + i + " runs out");
    }
    require(cost == plan.cost(), "the sticks cost " + cost + ", not " + plan.cost());
    require(plan.atLeast() <= cost, "the bound " + plan.atLeast() + " is above the cost " + cost);
  }

  /** Both ends, every piece, and a kerf between neighbors. */
  private static long needed(StickOrder order, List<Integer> pieces) {
    long lengths = pieces.stream().mapToLong(piece -> order.pieces().get(piece).length()).sum();
    return 2 * order.trim() + lengths + (pieces.size() - 1) * order.kerf();
  }

  private static boolean isLongestFirst(StickOrder order, List<Integer> pieces) {
    for (int i = 1; i < pieces.size(); i++) {
      if (order.pieces().get(pieces.get(i)).length()
          > order.pieces().get(pieces.get(i - 1)).length()) {
        return false;
      }
    }
    return true;
  }

  private static void require(boolean holds, String complaint) {
    if (!holds) {
      throw new WrongPlanException(complaint);
    }
  }
}
