package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.leveling.string.TestCottage;
import sheathwright.wood.LumberSize;

class RepairListTest {

  private static LevelPlan plan(Figure<Ratio> ratio) {
    return LevelPlan.of(
        "A",
        TestCottage.rafters("A", TestCottage.A),
        LevelRules.usual(LumberSize.SIZE_2X8, LumberSize.SIZE_2X4),
        FramingAnswer.of(ratio));
  }

  @Test
  void list_beginsWithStopWhereTheOldRaftersScreenAboveWhatTheyCarry() {
    // the invented cottage's own screening, worked by hand: 2.783
    LevelPlan plan = plan(Amounts.number(2.783));
    assertThat(plan.decision().value()).isEqualTo(LevelDecision.ENGINEER_FIRST);
    assertThat(plan.framing().check().ok().holds()).isFalse();
    assertThat(RepairList.of(plan).lines().get(0))
        .startsWith("STOP: the old rafters fail the screening")
        .contains("a licensed engineer decides before any leveling");
  }

  @Test
  void list_saysScreeningOnlyWhereTheyPass() {
    assertThat(RepairList.of(plan(Amounts.number(1))).lines().get(0))
        .contains("screening only: local code and a licensed engineer decide");
  }

  @Test
  void list_isNotToBeHadWhereTheScreeningWasRefused() {
    Figure<Ratio> refused =
        Figure.of(3, Units.RATIO).within("framing_ratio", Units.RATIO, Limits.between(0, 1, ""));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> RepairList.of(plan(refused)));
  }

  @Test
  void list_hasALineForEveryRafter() {
    assertThat(
            RepairList.of(plan(Amounts.number(0.5))).lines().stream()
                .filter(line -> line.startsWith("Rafter ")))
        .hasSize(15)
        .contains("Rafter A-1: leave.", "Rafter A-2: shim.");
  }

  @Test
  void list_warnsOfAStickThatIsNearlyLongEnough() {
    assertThat(RepairList.of(plan(Amounts.number(0.5))).toString())
        .contains("12' 0\" is only 0.2221 in short");
  }
}
