package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/** Arguments under guard, on both sides of every limit. */
class LimitsTest {

  private static final Limits GRAVITY =
      Limits.between(0.31, 0.73, "the woods in NDS 2018 Table 12.2C; spruce-pine-fir is 0.42");
  private static final Limits ROWS = Limits.whole(1, 4, "2 is usual");
  private static final Limits DEFLECTION = Limits.either(180, 240, "the IRC's");

  private static Figure<Ratio> gravity(double value) {
    return number(value).within("specific_gravity", Units.RATIO, GRAVITY);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.31, 0.42, 0.73})
  void within_letsThroughWhatLiesWithin(double value) {
    assertThat(gravity(value).value()).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({"42, 42", "0.3099999, 0.3099999", "0.7300001, 0.7300001", "-0.5, -0.5"})
  void within_refusesWhatLiesOutside(double value, String shown) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> gravity(value).value())
        .withMessage(
            "specific_gravity is "
                + shown
                + "; it must be from 0.31 to 0.73, the woods in NDS 2018 Table 12.2C;"
                + " spruce-pine-fir is 0.42");
  }

  @Test
  void within_looksAtTheUnitOfTheParameter() {
    Limits stock = Limits.between(8, 20, "");
    Figure<Length> stick = in(96).within("stock_ft", Units.FOOT, stock);
    assertThat(stick.value()).isEqualTo(96 / 12);
    assertThat(stick.name()).isEqualTo("stock_ft");
    assertThat(
            ft(21)
                .in(Units.INCH)
                .within("stock_ft", Units.FOOT, stock)
                .refusal()
                .map(Refusal::reason))
        .contains("stock_ft is 21; it must be from 8 to 20");
  }

  @Test
  void within_remembersTheArgumentAndItsSource() {
    Source place = Source.given("rafters.csv, line 3, column sag_in");
    Figure<Length> sag = Figure.input("sag_in", 1.375, Units.INCH, Limits.NONE, place);
    Figure<Length> guarded = sag.within("sag_in", Units.INCH, Limits.between(0, 6, ""));
    assertThat(((Step.Guarded) guarded.step()).argument()).isSameAs(sag);
    assertThat(guarded.source()).isEqualTo(place);
  }

  @ParameterizedTest
  @ValueSource(doubles = {180, 240})
  void either_letsThroughTheOneAndTheOther(double value) {
    assertThat(number(value).within("deflection_limit", Units.RATIO, DEFLECTION).value())
        .isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({"179, 179", "200, 200", "241, 241", "180.5, 180.5", "0, 0"})
  void either_refusesEverythingElse(double value, String shown) {
    assertThat(
            number(value)
                .within("deflection_limit", Units.RATIO, DEFLECTION)
                .refusal()
                .map(Refusal::reason))
        .contains("deflection_limit is " + shown + "; it must be 180 or 240, the IRC's");
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 4})
  void whole_letsThroughWholeNumbers(double value) {
    assertThat(number(value).within("nail_rows", Units.RATIO, ROWS).value()).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "5, 5", "1.5, 1.5", "0.999999, 0.999999", "3.000001, 3.000001"})
  void whole_refusesPartsAndWhatLiesOutside(double value, String shown) {
    assertThat(number(value).within("nail_rows", Units.RATIO, ROWS).refusal().map(Refusal::reason))
        .contains("nail_rows is " + shown + "; it must be a whole number from 1 to 4, 2 is usual");
  }

  @Test
  void and_isTheNarrowerOfTwo() {
    Limits wide = Limits.between(0, 100, "the column's");
    Limits narrow = Limits.between(10, 200, "the function's");
    assertThat(narrow.and(wide)).isEqualTo(Limits.between(10, 100, "the function's"));
    assertThat(wide.and(ROWS)).isEqualTo(Limits.whole(1, 4, "the column's"));
    assertThat(wide.and(Limits.NONE)).isEqualTo(wide);
    assertThat(Limits.NONE.and(wide)).isEqualTo(wide);
    assertThat(wide.and(DEFLECTION)).isEqualTo(DEFLECTION);
    assertThat(DEFLECTION.and(wide)).isEqualTo(DEFLECTION);
  }

  @Test
  void input_isRefusedOutsideItsOwnLimits() {
    Limits share = Limits.between(0, 100, "");
    assertThat(Figure.input("waste_pct", 100, Units.PERCENT, share, Source.GIVEN).refusal())
        .isEmpty();
    assertThat(
            Figure.input("waste_pct", 100.5, Units.PERCENT, share, Source.GIVEN)
                .refusal()
                .map(Refusal::reason))
        .contains("waste_pct is 100.5; it must be from 0 to 100");
  }

  @Test
  void restated_isAFreshInputThatKnowsNothingOfItsPast() {
    Figure<Length> cost = in(40).plus(in(2)).as("length_in", Units.INCH);
    Source quote = Source.given("quoted");
    Figure<Length> restated = cost.restated("sister_in", Limits.between(0, 50, ""), quote);
    assertThat(restated.value()).isEqualTo(40 + 2);
    assertThat(restated.name()).isEqualTo("sister_in");
    assertThat(restated.unit()).isEqualTo(Units.INCH);
    assertThat(restated.source()).isEqualTo(quote);
    assertThat(restated.step())
        .isEqualTo(new Step.Given(Step.Given.Role.INPUT, Limits.between(0, 50, "")));
    assertThat(restated.step().operands()).isEmpty();
  }

  @Test
  void restated_raisesTheRefusalOfWhatHasNoValue() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> in(1).dividedBy(in(0)).restated("share", Limits.NONE, Source.GIVEN))
        .withMessage("1 in cannot be divided by 0 in, which is zero");
  }

  @Test
  void inWords_saysWhatIsAllowed() {
    assertThat(GRAVITY.inWords()).isEqualTo("from 0.31 to 0.73");
    assertThat(DEFLECTION.inWords()).isEqualTo("180 or 240");
    assertThat(ROWS.inWords()).isEqualTo("a whole number from 1 to 4");
    assertThat(GRAVITY.exist()).isTrue();
    assertThat(Limits.NONE.exist()).isFalse();
  }
}
