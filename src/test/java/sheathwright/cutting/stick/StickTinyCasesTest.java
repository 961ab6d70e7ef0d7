package sheathwright.cutting.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;

/** Cases that can be worked by hand: lengths in sixteenths of an inch, a kerf of 1/8 in. */
class StickTinyCasesTest {

  private static final long KERF = 2;

  private static StockLength stock(double inches, long cents) {
    return new StockLength(sixteenths(inches), cents, StockLength.ANY);
  }

  private static long sixteenths(double inches) {
    return Math.round(inches * 16);
  }

  private static StickPlan plan(List<StockLength> stock, double trim, double... pieces) {
    List<StickPiece> wanted =
        Arrays.stream(pieces).mapToObj(inches -> new StickPiece(sixteenths(inches), 1)).toList();
    StickPlan plan =
        StickCutting.plan(new StickOrder(stock, wanted, KERF, sixteenths(trim)), Patience.ENDLESS);
    assertThat(plan.isProven()).isTrue();
    return plan;
  }

  /** One stock length, each stick at a cost of 1. Worked by hand. */
  @ParameterizedTest(name = "{1} pieces of {2} in from {0} in, trim {3} in: {4} sticks")
  @CsvSource({
    "96,     3, 32,       0,   2", // 3 × 32 + 2 × 1/8 = 96 1/4
    "96,     3, 31.875,   0,   1", // 95 5/8 + 1/4 = 95 7/8
    "95.875, 3, 31.875,   0,   1", // waste exactly 0
    "96,     1, 96,       0,   1", // no cut at all
    "96,     1, 95.9375,  0,   1", // the rest is thinner than the kerf
    "192,    2, 95.5,     0.5, 2", // 191 in are usable, 191 1/8 are needed
    "192.125, 2, 95.5,    0.5, 1" // 191 1/8 in are usable
  })
  void plan_countsKerfsAndTrims(double length, int count, double piece, double trim, int sticks) {
    double[] pieces = new double[count];
    Arrays.fill(pieces, piece);
    StickPlan plan = plan(List.of(stock(length, 1)), trim, pieces);
    assertThat(plan.sticks()).hasSize(sticks);
    assertThat(plan.cost()).isEqualTo(sticks);
  }

  @Test
  void plan_takesTwoShortSticksWhereTheyAreCheaper() {
    StickPlan plan = plan(List.of(stock(120, 1042), stock(240, 2296)), 0, 119, 119);
    assertThat(plan.cost()).isEqualTo(2084);
    assertThat(plan.sticks())
        .containsExactlyInAnyOrder(new CutStick(0, List.of(0)), new CutStick(0, List.of(1)));
  }

  @Test
  void plan_seesThatTheKerfDoesNotFit() {
    // 119 + 121 + 1/8 = 240 1/8
    assertThat(plan(List.of(stock(120, 1042), stock(240, 2296)), 0, 119, 121).cost())
        .isEqualTo(3338);
  }

  @Test
  void plan_takesTheMiddleLength() {
    StickPlan plan = plan(List.of(stock(96, 798), stock(144, 1197), stock(192, 1688)), 0, 70, 70);
    assertThat(plan.cost()).isEqualTo(1197);
    assertThat(plan.sticks()).containsExactly(new CutStick(1, List.of(0, 1)));
  }

  @Test
  void plan_usesTheOffcutOnce() {
    StockLength offcut = new StockLength(sixteenths(60), 0, 1);
    assertThat(plan(List.of(offcut, stock(96, 798)), 0, 59, 59).cost()).isEqualTo(798);
  }

  @Test
  void plan_namesThePieceThatIsTooLong() {
    StickOrder order =
        new StickOrder(
            List.of(stock(96, 1), new StockLength(sixteenths(120), 1, 0)),
            List.of(new StickPiece(sixteenths(96), 1), new StickPiece(sixteenths(97), 1)),
            KERF,
            0);
    assertThatThrownBy(() -> StickCutting.plan(order, Patience.ENDLESS))
        .isInstanceOfSatisfying(
            CannotBeCutException.class, refusal -> assertThat(refusal.piece()).isEqualTo(1))
        .hasMessage("piece 1 of length 1552 is longer than every stick");
  }

  @Test
  void plan_saysThatTheStockIsNotEnough() {
    // Two pieces over half a stick, one stick.
    StickOrder order =
        new StickOrder(List.of(new StockLength(96, 5, 1)), List.of(new StickPiece(60, 2)), KERF, 0);
    assertThatThrownBy(() -> StickCutting.plan(order, Patience.ENDLESS))
        .isInstanceOfSatisfying(
            CannotBeCutException.class, refusal -> assertThat(refusal.piece()).isEqualTo(-1))
        .hasMessage("the stock is not enough");
  }

  @Test
  void plan_ofNothingIsNothing() {
    StickOrder noneOfOne = new StickOrder(List.of(), List.of(new StickPiece(5, 0)), KERF, 0);
    for (StickPlan nothing :
        List.of(plan(List.of(stock(96, 798)), 0), StickCutting.plan(noneOfOne, Patience.ENDLESS))) {
      assertThat(nothing.sticks()).isEmpty();
      assertThat(nothing.cost()).isZero();
      assertThat(nothing.isProven()).isTrue();
    }
  }
}
