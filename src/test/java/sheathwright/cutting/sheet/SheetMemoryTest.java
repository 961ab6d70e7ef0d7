package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.cutting.CountedPatience;
import sheathwright.cutting.Patience;

/** A plan that is remembered is the one that would be found, and costs the same patience. */
class SheetMemoryTest {

  private static final int SEED = 7_919;

  /** As the counted one, but of a kind for which nothing is remembered. */
  private static final class Uncounted implements Patience {
    private int left;

    Uncounted(int times) {
      left = times;
    }

    @Override
    public double secondsLeft() {
      return left-- / ASKED_A_SECOND;
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 20, 3_000})
  void aPlanAskedForAgain_isTheOneThatASearchFinds(int times) {
    SheetOrder order = SheetOrders.patches(SEED);
    Uncounted searching = new Uncounted(times);
    SheetPlan found = SheetCutting.plan(order, searching);
    for (int asked = 0; asked < 2; asked++) {
      Patience patience = Patience.asked(times);
      assertThat(SheetCutting.plan(order, patience)).isEqualTo(found);
      assertThat(((CountedPatience) patience).left()).isEqualTo(searching.left);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 20, 3_000})
  void anotherOrder_isSoughtAnew(int times) {
    SheetPlan one = SheetCutting.plan(SheetOrders.patches(SEED), Patience.asked(times));
    SheetOrder other = SheetOrders.patches(SEED + 1);
    SheetPlan another = SheetCutting.plan(other, Patience.asked(times));
    assertThat(another).isNotEqualTo(one);
    SheetPlanCheck.check(other, another);
  }
}
