package sheathwright.cutting;

import java.util.ArrayList;
import java.util.List;

/** Stand-in until the real search is merged. */
public final class StickCutting {
  private StickCutting() {}

  public static StickPlan plan(StickOrder order, Patience patience) {
    List<CutStick> sticks = new ArrayList<>();
    long cost = 0;
    for (int i = 0; i < order.pieces().size(); i++) {
      for (int k = 0; k < order.pieces().get(i).count(); k++) {
        sticks.add(new CutStick(order.stock().size() - 1, List.of(i)));
        cost += order.stock().get(order.stock().size() - 1).price();
      }
    }
    return new StickPlan(sticks, cost, 0);
  }
}
