package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.sqft;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/** Both branches are kept; only the one taken can refuse. */
class ChooseTest {

  private static final Condition TRUE = in(1).isAtMost(in(2));
  private static final Condition FALSE = in(2).isAtMost(in(1));
  private static final Figure<Ratio> ZERO = number(0).as("rows", Units.RATIO);
  private static final Figure<Length> REFUSED = in(48).dividedBy(ZERO).as("gap_in", Units.INCH);
  private static final String BY_ZERO = "48 in cannot be divided by rows, which is zero";

  @Test
  void choose_takesTheFirstIfTheConditionHolds() {
    assertThat(Figure.choose(TRUE, in(3), in(4)).value()).isEqualTo(3);
    assertThat(Figure.choose(FALSE, in(3), in(4)).value()).isEqualTo(4);
  }

  @Test
  void choose_answersInTheUnitOfTheFirst() {
    Figure<Length> answer = Figure.choose(FALSE, in(3), ft(4));
    assertThat(answer.value()).isEqualTo(4 * 12);
    assertThat(answer.unit()).isEqualTo(Units.INCH);
  }

  @Test
  void choose_keepsTheRefusalOfTheBranchNotTakenSilent() {
    assertThat(Figure.choose(FALSE, REFUSED, in(4)).value()).isEqualTo(4);
    assertThat(Figure.choose(TRUE, in(3), REFUSED).value()).isEqualTo(3);
  }

  @Test
  void choose_raisesTheRefusalOfTheBranchTaken() {
    assertThat(Figure.choose(TRUE, REFUSED, in(4)).refusal().map(Refusal::reason))
        .contains(BY_ZERO);
    assertThat(Figure.choose(FALSE, in(3), REFUSED).refusal().map(Refusal::reason))
        .contains(BY_ZERO);
  }

  @Test
  void choose_keepsBothBranchesInItsStep() {
    Step.Chosen step = (Step.Chosen) Figure.choose(TRUE, in(3), REFUSED).step();
    assertThat(step.then().plain()).isEqualTo("3");
    assertThat(step.otherwise()).isSameAs(REFUSED);
  }

  @Test
  void choose_refusesWhereItCannotDecide() {
    Condition undecided = REFUSED.isLessThan(in(1));
    assertThat(Figure.choose(undecided, in(3), in(4)).refusal().map(Refusal::reason))
        .contains(BY_ZERO);
    assertThat(Choice.choose(undecided, YesNo.YES, YesNo.NO).refusal().map(Refusal::reason))
        .contains(BY_ZERO);
  }

  @Test
  void choice_choosesWordsTheSameWay() {
    assertThat(Choice.choose(TRUE, YesNo.YES, YesNo.NO).value()).isEqualTo(YesNo.YES);
    assertThat(Choice.choose(FALSE, YesNo.YES, YesNo.NO).value()).isEqualTo(YesNo.NO);
    assertThat(FALSE.as("ok").shown()).isEqualTo("no");
  }

  @Test
  void conditions_join() {
    assertThat(Condition.all(TRUE, TRUE).holds()).isTrue();
    assertThat(Condition.all(TRUE, FALSE).holds()).isFalse();
    assertThat(Condition.any(FALSE, TRUE).holds()).isTrue();
    assertThat(Condition.any(FALSE, FALSE).holds()).isFalse();
  }

  @Test
  void is_matchesOneWord() {
    Choice<YesNo> answer = Choice.input("blocked_edges", YesNo.NO, Source.GIVEN);
    assertThat(answer.is(YesNo.NO).holds()).isTrue();
    assertThat(answer.is(YesNo.YES).holds()).isFalse();
    assertThat(answer.options()).containsExactly("yes", "no");
  }

  @Test
  void onlyIf_standsWhileTheConditionHolds() {
    assertThat(sqft(7).onlyIf(TRUE, "never said").value()).isEqualTo(7);
    assertThat(sqft(7).onlyIf(FALSE, "sag_in is too deep").refusal().map(Refusal::reason))
        .contains("sag_in is too deep");
  }

  @Test
  void check_isOkUpToAndAtOne() {
    assertThat(Check.of("bending", "bending_ratio", in(2), in(2)).ok().holds()).isTrue();
    assertThat(Check.of("bending", "bending_ratio", in(2.001), in(2)).ok().holds()).isFalse();
    assertThat(Check.of("bending", "bending_ratio", in(1), in(2)))
        .hasToString("bending: 1 in of 2 in, ratio 0.5, ok");
    assertThat(Check.of("bending", "bending_ratio", in(3), in(2)))
        .hasToString("bending: 3 in of 2 in, ratio 1.5, NOT ok");
  }

  @Test
  void check_isPrintedEvenIfItIsRefused() {
    String refused = "refused: " + BY_ZERO;
    assertThat(Check.of("bending", "bending_ratio", REFUSED, in(2)))
        .hasToString(
            "bending: " + refused + " of 2 in, ratio " + refused + ", not looked at: " + BY_ZERO);
  }
}
