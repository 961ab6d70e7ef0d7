package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.sqft;
import static sheathwright.figure.Amounts.usd;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Quantity.Length;

/** What has no value, and how the reason travels until somebody asks. */
class RefusalTest {

  private static final Figure<Length> BAD =
      in(60).within("spacing_in", Units.INCH, Limits.between(4, 48, "16 and 24 are usual"));
  private static final String REASON =
      "spacing_in is 60; it must be from 4 to 48, 16 and 24 are usual";

  static Stream<Supplier<Traced>> everythingMadeFromIt() {
    Condition undecided = BAD.isAtMost(in(24));
    return Stream.of(
        () -> BAD.plus(in(1)),
        () -> in(1).minus(BAD),
        () -> BAD.times(in(2)),
        () -> in(2).dividedBy(BAD),
        () -> BAD.dividedBy(in(2)),
        () -> BAD.dividedBy(in(2)).in(Units.RATIO).power(number(2)),
        () -> BAD.squared(),
        () -> BAD.cubed(),
        () -> BAD.squared().squareRoot(),
        () -> BAD.cubed().cubeRoot(),
        () -> BAD.min(in(1)),
        () -> in(1).max(BAD),
        () -> BAD.roundedUp(),
        () -> BAD.roundedDown(),
        () -> BAD.rounded(),
        () -> BAD.roundedUpTo(in(2)),
        () -> BAD.in(Units.FOOT),
        () -> BAD.as("spacing_ft", Units.FOOT),
        () -> BAD.symbol("s"),
        () -> BAD.within("other_in", Units.INCH, Limits.between(0, 1, "")),
        () -> BAD.onlyIf(in(1).isAtMost(in(2)), "never said"),
        () -> in(1).onlyIf(undecided, "never said"),
        () -> Figure.choose(undecided, in(1), in(2)),
        () -> undecided,
        () -> Condition.all(in(1).isAtMost(in(2)), undecided),
        () -> Condition.any(in(1).isAtMost(in(2)), undecided),
        () -> undecided.as("ok"),
        () -> Choice.choose(undecided, YesNo.YES, YesNo.NO),
        () -> Choice.feetAndInches(BAD),
        () -> Check.of("bending", "bending_ratio", BAD, in(2)).ratio());
  }

  @ParameterizedTest
  @MethodSource("everythingMadeFromIt")
  void refusal_passesThroughEveryOperation(Supplier<Traced> operation) {
    Traced made = operation.get();
    assertThat(made.refusal().map(Refusal::reason)).contains(REASON);
    assertThat(made).hasToString("refused: " + REASON);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(made::shown)
        .withMessage("%s", REASON);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(made::plain)
        .withMessage("%s", REASON);
  }

  @Test
  void refusal_isRaisedOnlyWhenTheValueIsAskedFor() {
    assertThatNoException().isThrownBy(() -> BAD.times(in(2)).plus(sqft(1)));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> BAD.times(in(2)).value())
        .withMessage(REASON);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> BAD.isAtMost(in(2)).holds())
        .withMessage(REASON);
  }

  @Test
  void refusal_ofTheFirstOperandIsTheOneTold() {
    Figure<Length> alsoBad = in(0).within("gap_in", Units.INCH, Limits.between(1, 2, ""));
    assertThat(alsoBad.plus(BAD).refusal().map(Refusal::reason))
        .contains("gap_in is 0; it must be from 1 to 2");
  }

  @Test
  void dividedBy_refusesZeroAndNamesBoth() {
    assertThat(
            usd(117)
                .as("quoted_usd", Units.USD)
                .dividedBy(usd(0).as("material_usd", Units.USD))
                .refusal()
                .map(Refusal::reason))
        .contains("quoted_usd cannot be divided by material_usd, which is zero");
    assertThat(ft(8).dividedBy(in(0)).refusal().map(Refusal::reason))
        .contains("8' 0\" cannot be divided by 0 in, which is zero");
  }

  @Test
  void roots_refuseANegativeNumber() {
    Figure<?> under = sqft(1).minus(sqft(5)).as("left_sf", Units.SQUARE_INCH);
    assertThat(under.squareRoot().refusal().map(Refusal::reason))
        .contains("√(left_sf) has no value");
    assertThat(number(-8).cubeRoot().refusal().map(Refusal::reason))
        .contains("(-8)^(1/3) has no value");
    assertThat(number(-1).power(number(0.5)).refusal().map(Refusal::reason))
        .contains("-1^0.5 has no value");
  }

  @Test
  void times_refusesWhatOverflows() {
    Figure<?> huge = number(1e200).as("huge", Units.RATIO);
    assertThat(huge.times(huge).refusal().map(Refusal::reason))
        .contains("huge × huge has no value");
  }

  @Test
  void in_refusesWhatOverflows() {
    assertThat(ft(1.7e308).as("far_ft", Units.FOOT).in(Units.INCH).refusal().map(Refusal::reason))
        .contains("far_ft has no value in in");
  }

  @Test
  void sum_refusesWhatOverflows() {
    Roll roll =
        Roll.of(
            "spans",
            "the spans",
            List.of(1.7e308, 1.7e308),
            Roll.column("span_in", (Double span) -> in(span)));
    assertThat(roll.sum("span_in", Units.INCH).refusal().map(Refusal::reason))
        .contains("the sum of span in the spans has no value");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void given_refusesWhatIsNotANumber(double number) {
    String reason = "\"" + number + "\" is not a number that can be used";
    assertThat(
            List.of(
                Figure.of(number, Units.INCH),
                Figure.constant("constant_in", number, Units.INCH, Source.GIVEN),
                Figure.input("gap_in", number, Units.INCH, Limits.NONE, Source.GIVEN)))
        .allSatisfy(figure -> assertThat(figure.refusal().map(Refusal::reason)).contains(reason));
  }
}
