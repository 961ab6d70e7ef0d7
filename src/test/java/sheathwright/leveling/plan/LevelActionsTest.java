package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Amounts;
import sheathwright.figure.YesNo;
import sheathwright.leveling.string.TestCottage;
import sheathwright.leveling.target.LevelThresholds;

class LevelActionsTest {

  private static long counted(double[] drops, LevelAction what) {
    return Arrays.stream(drops)
        .mapToObj(
            drop ->
                LevelActions.levelingAction(Amounts.in(drop), LevelThresholds.usual(), YesNo.NO)
                    .value())
        .filter(action -> action == what)
        .count();
  }

  @Test
  void levelingAction_countsTheCottage() {
    // question 12 of the invented questions, counted by hand
    assertThat(counted(TestCottage.A, LevelAction.SISTER)).isEqualTo(11);
    assertThat(counted(TestCottage.A, LevelAction.SHIM)).isEqualTo(2);
    assertThat(counted(TestCottage.A, LevelAction.LEAVE)).isEqualTo(2);
    assertThat(counted(TestCottage.B, LevelAction.SISTER)).isEqualTo(7);
    assertThat(counted(TestCottage.B, LevelAction.SHIM)).isEqualTo(5);
    assertThat(counted(TestCottage.B, LevelAction.LEAVE)).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource({
    // both thresholds belong to the gentler action
    "0.125,     no,  leave",
    "0.1250001, no,  shim",
    "0.375,     no,  shim",
    "0.3750001, no,  sister",
    "-0.125,    no,  leave",
    "-0.13,     no,  plane",
    // a truss may be shimmed and left, never sistered or planed
    "0.125,     yes, leave",
    "0.375,     yes, shim",
    "0.4,       yes, stop",
    "-0.13,     yes, stop",
  })
  void levelingAction_atTheThresholds(String buildUp, String truss, String action) {
    Asked asked = Asked.of("leveling_action").with("build_up_in", buildUp).with("truss", truss);
    assertThat(asked.answer("action")).isEqualTo(action);
  }
}
