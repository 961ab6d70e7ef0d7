package sheathwright.cutting.stick;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.program.Certificate;

/** Orders that make no sense are refused, and wrong plans do not get out. */
class StickOrderTest {

  private static final StockLength STOCK = new StockLength(96, 7, 2);
  private static final StickPiece LONG = new StickPiece(60, 1);
  private static final StickPiece SHORT = new StickPiece(30, 2);
  private static final StickOrder ORDER =
      new StickOrder(List.of(STOCK), List.of(SHORT, LONG), 2, 1);

  @Test
  void order_namesWhatIsWrong() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StockLength(0, 1, 1))
        .withMessage("stock length is 0; it must be from 1 to 1000000000000");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StockLength(1, -1, 1))
        .withMessageStartingWith("stock price is -1;");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StockLength(1, 1, -1))
        .withMessageStartingWith("stock available is -1;");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StickPiece(0, 1))
        .withMessageStartingWith("piece length is 0;");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StickPiece(1, -1))
        .withMessageStartingWith("piece count is -1;");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StickOrder(List.of(), List.of(), -1, 0))
        .withMessageStartingWith("kerf is -1;");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StickOrder(List.of(), List.of(), 0, -1))
        .withMessageStartingWith("trim is -1;");
    StickPiece many = new StickPiece(1, StickOrder.MOST_PIECES);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StickOrder(List.of(STOCK), List.of(many, LONG), 0, 0))
        .withMessageStartingWith("number of pieces is 100001;");
  }

  @Test
  void check_letsARightPlanPass() {
    // 1 + 60 + 2 + 30 + 1 = 94 fits 96.
    StickPlanCheck.checked(ORDER, plan(14, 14, stick(1, 0), stick(0)));
  }

  @Test
  void check_stopsAWrongPlan() {
    stops(plan(7, 7, stick(1, 0)), "piece 0 is cut 1 times");
    stops(plan(14, 14, stick(1, 0, 0), stick(0)), "do not fit stock 0");
    stops(plan(14, 14, stick(0, 1), stick(0)), "a shorter piece comes first");
    stops(plan(21, 14, stick(1), stick(0), stick(0)), "stock 0 runs out");
    stops(plan(13, 13, stick(1, 0), stick(0)), "the sticks cost 14, not 13");
    stops(plan(14, 15, stick(1, 0), stick(0)), "the bound 15 is above the cost 14");
    stops(plan(14, 14, stick(1, 0), stick(0), stick()), "a stick is cut into nothing");
  }

  private static void stops(StickPlan plan, String complaint) {
    assertThatIllegalStateException()
        .isThrownBy(() -> StickPlanCheck.checked(ORDER, plan))
        .withMessageContaining(complaint);
  }

  private static StickPlan plan(long cost, long atLeast, CutStick... sticks) {
    return new StickPlan(
        List.of(sticks), cost, atLeast, new Certificate(1, List.of(), List.of(), 0));
  }

  private static CutStick stick(Integer... pieces) {
    return new CutStick(0, List.of(pieces));
  }
}
