package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.in;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;

/** Where there is no number: because there is none to give, nobody measured, or it is missing. */
class AbsenceTest {

  private static final Figure<Length> NO_LIMIT = Figure.none("no limit", Units.INCH);

  @Test
  void noNumber_isAnAnswerInWords() {
    assertThat(NO_LIMIT).hasToString("no limit");
    assertThat(NO_LIMIT.shown()).isEqualTo("no limit");
    assertThat(NO_LIMIT.symbol()).isEqualTo("no limit");
    assertThat(NO_LIMIT.plain()).isEmpty();
    assertThat(NO_LIMIT.isAbsent()).isTrue();
    assertThat(NO_LIMIT.unit()).isEqualTo(Units.INCH);
    assertThat(NO_LIMIT.source()).isEqualTo(Source.ARITHMETIC);
    assertThat(NO_LIMIT.step().isLiteral()).isTrue();
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(NO_LIMIT::value)
        .withMessage("there is no number: no limit");
  }

  @Test
  void nothingCanBeComputed_fromNoNumber() {
    Figure<Length> sum = NO_LIMIT.plus(in(1));
    assertThat(sum).hasToString("refused: nothing can be computed from \"no limit\"");
    assertThat(sum.isAbsent()).isFalse();
    assertThat(in(1).max(NO_LIMIT).refusal().map(Refusal::reason))
        .contains("nothing can be computed from \"no limit\"");
    assertThat(in(1).isAbsent()).isFalse();
  }

  @Test
  void whatNobodyMeasured_saysSoUnderItsName() {
    Source column = Source.given("rafters.csv, line 3");
    Figure<Length> sag = Figure.notMeasured("sag_in", Units.INCH, column);
    assertThat(sag).hasToString("not measured");
    assertThat(sag.name()).isEqualTo("sag_in");
    assertThat(sag.source()).isEqualTo(column);
    assertThat(sag.step().isInput()).isTrue();
    assertThat(sag.refusal().orElseThrow().causes()).containsExactly(sag);
  }

  @Test
  void whatIsMissing_saysWhatWouldBeRight() {
    Limits limits = Limits.between(4, 48, "16 and 24 are usual");
    Figure<Length> missing = Figure.missing("spacing_in", Units.INCH, limits);
    assertThat(missing)
        .hasToString(
            "refused: spacing_in is missing; give from 4 to 48 inches, 16 and 24 are usual");
    assertThat(missing.name()).isEqualTo("spacing_in");
    assertThat(missing.isAbsent()).isFalse();
    assertThat(missing.step().isLiteral()).isTrue();
    assertThat(missing.source()).isEqualTo(Source.GIVEN);
  }

  @Test
  void restatedBeyondItsLimits_isRefusedBecauseOfTheFigure() {
    Figure<Length> depth = in(40).plus(in(20)).as("depth_in", Units.INCH);
    Figure<Length> restated =
        depth.restated("sister_in", Limits.between(0, 50, "a stock size"), Source.GIVEN);
    assertThat(restated)
        .hasToString("refused: sister_in is 60; it must be from 0 to 50, a stock size");
    assertThat(restated.refusal().orElseThrow().causes()).containsExactly(depth);
  }

  @Test
  void aRefusedFigure_carriesNoNumber() {
    Figure<Length> far = Figure.of(1.7e308, Units.FOOT).in(Units.INCH);
    assertThat(far.refusal()).isPresent();
    assertThat(far.number()).isZero();
    assertThat(in(1.7e308).plus(in(1.7e308)).number()).isZero();
  }
}
