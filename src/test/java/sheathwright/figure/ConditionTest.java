package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Quantity.Length;

/**
 * Truths: what holds on either side of a border, what is told of them, and how a refusal goes on.
 */
class ConditionTest {

  private static final Condition TRUE = in(1).isAtMost(in(2));
  private static final Condition FALSE = in(2).isAtMost(in(1));
  private static final Figure<Length> BAD =
      in(60).within("gap_in", Units.INCH, Limits.between(0, 4, ""));
  private static final String REASON = "gap_in is 60; it must be from 0 to 4";

  @ParameterizedTest
  @CsvSource({
    "1, true, true, false, false, false",
    "2, true, false, true, false, true",
    "3, false, false, true, true, false"
  })
  void aNumber_isHeldAgainstTwo(
      double it, boolean atMost, boolean less, boolean atLeast, boolean more, boolean same) {
    assertThat(in(it).isAtMost(in(2)).holds()).isEqualTo(atMost);
    assertThat(in(it).isLessThan(in(2)).holds()).isEqualTo(less);
    assertThat(in(it).isAtLeast(in(2)).holds()).isEqualTo(atLeast);
    assertThat(in(it).isMoreThan(in(2)).holds()).isEqualTo(more);
    assertThat(in(it).isTheSameAs(in(2)).holds()).isEqualTo(same);
  }

  @Test
  void aTruth_isToldAsYesOrNo() {
    assertThat(List.of(TRUE.shown(), TRUE.plain(), TRUE.toString())).containsOnly("yes");
    assertThat(List.of(FALSE.shown(), FALSE.plain(), FALSE.toString())).containsOnly("no");
    assertThat(TRUE.isNamed()).isFalse();
    assertThat(TRUE.symbol()).isEmpty();
    assertThat(TRUE.source()).isEqualTo(Source.ARITHMETIC);
    assertThat(TRUE.as("fits").name()).isEqualTo("fits");
    assertThat(TRUE.as("fits").value()).isEqualTo(YesNo.YES);
  }

  @Test
  void aRefusedSide_refusesTheTruth() {
    for (Condition refused :
        List.of(
            BAD.isAtMost(in(1)),
            in(1).isAtMost(BAD),
            BAD.plus(in(1)).isMeasured(),
            Condition.all(FALSE, BAD.isAtMost(in(1))),
            Condition.any(BAD.isAtMost(in(1)), TRUE))) {
      assertThat(refused).hasToString("refused: " + REASON);
      assertThat(refused.refusal().orElseThrow().causes()).containsExactly(BAD);
      assertThatExceptionOfType(RefusedException.class)
          .isThrownBy(refused::holds)
          .withMessage(REASON);
    }
  }

  @Test
  void theFirstRefusal_isTheOneTold() {
    Condition byZero = number(1).dividedBy(number(0)).isAtMost(number(1));
    assertThat(Condition.all(TRUE, byZero, BAD.isAtMost(in(1))))
        .hasToString("refused: 1 cannot be divided by 0, which is zero");
  }

  @Test
  void whatMayBeLeftOpen_isMeasuredOrNot() {
    Limits limits = new Limits(0, 6, Limits.Kind.IF_MEASURED, "");
    Figure<Length> open = Figure.notMeasured("sag_in", Units.INCH, Source.GIVEN);
    assertThat(open.isMeasured().holds()).isFalse();
    assertThat(in(2).isMeasured().holds()).isTrue();
    assertThat(open.within("sag_in", Units.INCH, limits).isMeasured().holds()).isFalse();
    assertThat(in(2).within("sag_in", Units.INCH, limits).isMeasured().step().operands())
        .hasSize(1)
        .allMatch(each -> each.step().isLiteral());
  }

  /** What nobody measured is neither more nor less than anything, and no answer follows from it. */
  @Test
  void whatWasNotMeasured_comparesWithNothing() {
    Figure<Length> open = Figure.notMeasured("sag_in", Units.INCH, Source.GIVEN);
    for (Condition compared : List.of(open.isMoreThan(in(1)), in(1).isAtMost(open))) {
      assertThat(compared).hasToString("refused: nothing can be computed from \"not measured\"");
      assertThat(compared.refusal())
          .hasValueSatisfying(each -> assertThat(each.isAnswer()).isFalse());
    }
  }
}
