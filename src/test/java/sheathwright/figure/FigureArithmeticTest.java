package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.sheets;
import static sheathwright.figure.Amounts.sqft;
import static sheathwright.figure.Amounts.usd;
import static sheathwright.figure.Amounts.usdPerSheet;
import static sheathwright.figure.Amounts.usdPerTon;

import org.junit.jupiter.api.Test;

/** What operators compute, and in which unit the answer stands. */
class FigureArithmeticTest {

  private static final double LAST_BITS = 1e-14;

  @Test
  void plusAndMinus_stayInTheUnitOfTheFirst() {
    assertThat(ft(1).plus(in(6)).value()).isEqualTo(1 + 6d / 12);
    assertThat(ft(1).plus(in(6)).unit()).isEqualTo(Units.FOOT);
    assertThat(in(6).plus(ft(1)).value()).isEqualTo(6 + 1 * 12);
    assertThat(in(6).minus(ft(1)).value()).isEqualTo(6 - 1 * 12);
    assertThat(number(1).plus(pct(5)).value()).isEqualTo(1 + 5d / 100);
  }

  @Test
  void times_multipliesTheUnitsToo() {
    assertThat(usdPerSheet(38.50).times(sheets(10)).in(Units.USD).value()).isEqualTo(385);
    assertThat(ft(8).times(ft(4)).unit()).isEqualTo(Units.SQUARE_FOOT);
    assertThat(psf(20).times(sqft(32)).in(Units.POUND).value()).isEqualTo(20 * 32);
    assertThat(psf(30).times(in(16)).in(Units.POUND_PER_INCH).value())
        .isCloseTo(30 * 16d / 144, within(LAST_BITS * 4));
  }

  @Test
  void dividedBy_dividesTheUnitsToo() {
    assertThat(lb(2000).dividedBy(sqft(100)).in(Units.PSF).value()).isEqualTo(20);
    assertThat(ft(8).dividedBy(in(16)).in(Units.RATIO).value()).isEqualTo(8 * 12 / 16);
    assertThat(usdPerTon(78).times(lb(45)).in(Units.USD).value())
        .isCloseTo(78 * 45d / 2000, within(LAST_BITS * 2));
  }

  @Test
  void power_takesAPureNumber() {
    assertThat(number(0.25).power(number(0.5)).value()).isEqualTo(0.5);
    assertThat(number(4).power(pct(50)).value()).isEqualTo(2); // √4
    assertThat(pct(50).power(number(2)).value()).isEqualTo(0.5 * 0.5);
    assertThat(pitch(6).power(number(2)).value()).isEqualTo(6d / 12 * 6 / 12);
  }

  @Test
  void squaredAndCubed_raiseTheUnit() {
    assertThat(in(7.25).squared().in(Units.SQUARE_INCH).value()).isEqualTo(7.25 * 7.25);
    assertThat(ft(2).cubed().in(Units.CUBIC_INCH).value()).isEqualTo(24 * 24 * 24);
    assertThat(in(3).times(in(2).cubed()).in(Units.INCH_TO_THE_FOURTH).value()).isEqualTo(3 * 8);
  }

  @Test
  void roots_takeTheUnitDown() {
    assertThat(ft(4).times(ft(9)).squareRoot().in(Units.FOOT).value()).isEqualTo(6);
    assertThat(sqft(1).squareRoot().in(Units.INCH).value()).isEqualTo(12);
    assertThat(in(3).cubed().cubeRoot().in(Units.INCH).value()).isCloseTo(3, within(LAST_BITS * 3));
    assertThat(number(2).squareRoot().in(Units.RATIO).value()).isEqualTo(Math.sqrt(2));
  }

  @Test
  void orIfLessAndOrIfMore_compareAcrossUnits() {
    assertThat(ft(1).min(in(11)).value()).isEqualTo(11d / 12);
    assertThat(ft(1).min(in(13)).value()).isEqualTo(1);
    assertThat(ft(1).max(in(13)).value()).isEqualTo(13d / 12);
    assertThat(ft(1).max(in(11)).value()).isEqualTo(1);
  }

  @Test
  void rounding_keepsTheUnit() {
    assertThat(sheets(22.01).roundedUp().value()).isEqualTo(23);
    assertThat(sheets(22.99).roundedDown().value()).isEqualTo(22);
    assertThat(in(204.5).rounded().value()).isEqualTo(205);
    assertThat(in(204.5).rounded().unit()).isEqualTo(Units.INCH);
    assertThat(usd(1.005).toCents().value()).isEqualTo(1.01);
  }

  @Test
  void roundedUpTo_isTheNextMultipleOrTheNumberItself() {
    assertThat(ft(12.1).roundedUpTo(ft(2)).value()).isEqualTo(14);
    assertThat(ft(14).roundedUpTo(ft(2)).value()).isEqualTo(14);
    assertThat(in(16.01).roundedUpTo(in(16)).value()).isEqualTo(32);
    assertThat(ft(12.1).roundedUpTo(in(24).in(Units.FOOT)).value()).isEqualTo(14);
  }

  @Test
  void counting_makesAPureNumberACount() {
    assertThat(number(43).counting(Units.NAILS_PER_SHEET).value()).isEqualTo(43);
    assertThat(number(43).counting(Units.NAILS_PER_SHEET).times(sheets(2)).in(Units.NAIL).value())
        .isEqualTo(43 * 2);
    assertThat(pct(250).counting(Units.SHEET).value()).isEqualTo(2.5);
  }

  @Test
  void comparisons_lookAtFifteenDigits() {
    assertThat(number(0.1).plus(number(0.2)).isTheSameAs(number(0.3)).holds()).isTrue();
    assertThat(number(0.1).plus(number(0.2)).isAtMost(number(0.3)).holds()).isTrue();
    assertThat(number(0.1).plus(number(0.2)).isMoreThan(number(0.3)).holds()).isFalse();
    assertThat(number(0.3).isTheSameAs(number(0.1).plus(number(0.2))).holds()).isTrue();
    assertThat(number(0.3).isAtLeast(number(0.1).plus(number(0.2))).holds()).isTrue();
    assertThat(number(0.3).isLessThan(number(0.1).plus(number(0.2))).holds()).isFalse();
    assertThat(number(0.30000000000001).isTheSameAs(number(0.3)).holds()).isFalse();
  }

  @Test
  void comparisons_bringBothToOneUnit() {
    assertThat(ft(1).isTheSameAs(in(12)).holds()).isTrue();
    assertThat(ft(1).isLessThan(in(12)).holds()).isFalse();
    assertThat(ft(1).isAtLeast(in(12)).holds()).isTrue();
    assertThat(ft(1).isMoreThan(in(11)).holds()).isTrue();
    assertThat(ft(1).isAtMost(in(11)).holds()).isFalse();
  }

  @Test
  void as_namesAndConverts() {
    Figure<Quantity.Length> span = ft(12).plus(in(3)).as("span_in", Units.INCH);
    assertThat(span.name()).isEqualTo("span_in");
    assertThat(span.value()).isEqualTo(12 * 12 + 3);
    assertThat(span.symbol()).isEqualTo("span");
    assertThat(span.symbol("L").symbol()).isEqualTo("L");
    assertThat(span.symbol("L").value()).isEqualTo(span.value());
  }

  /** Tangents that every table of angles holds: 0, √3 ÷ 3, 1, √3 at 0, 30, 45 and 60 degrees. */
  @Test
  void arctangent_isTheAngleInRadians() {
    assertThat(number(0).arctangent().value()).isZero();
    assertThat(number(Math.sqrt(3) / 3).arctangent().value()).isCloseTo(Math.PI / 6, within(1e-15));
    assertThat(pitch(12).arctangent().value()).isCloseTo(Math.PI / 4, within(1e-15));
    assertThat(number(Math.sqrt(3)).arctangent().value()).isCloseTo(Math.PI / 3, within(1e-15));
    assertThat(number(-1).arctangent().value()).isCloseTo(-Math.PI / 4, within(1e-15));
  }

  /** Powers of ten; 1,000 % is ten, and nothing has no logarithm. */
  @Test
  void logarithm_isTheCommonOne() {
    assertThat(number(1000).logarithm().value()).isEqualTo(3);
    assertThat(pct(1000).logarithm().value()).isEqualTo(1);
    assertThat(number(0).logarithm().refusal().map(Refusal::reason))
        .contains("log(0) has no value");
  }

  /** A cube of 2 ft has edges of 24 in, a square of 3 ft sides of 36 in. */
  @Test
  void roots_areInTheUnitThatTheirNumberIsIn() {
    assertThat(ft(2).cubed().cubeRoot().in(Units.INCH).value())
        .isCloseTo(24, within(LAST_BITS * 24));
    assertThat(ft(3).squared().squareRoot().in(Units.INCH).value()).isEqualTo(36);
  }

  /** 30 in is a step and a quarter of 2 ft: two steps, 48 in. */
  @Test
  void roundedUpTo_takesAStepInAnotherUnit() {
    assertThat(in(30).roundedUpTo(ft(2)).value()).isEqualTo(48);
    assertThat(in(30).roundedUpTo(ft(2)).unit()).isEqualTo(Units.INCH);
  }

  @Test
  void comparisons_failByTheUnitOfTheOther() {
    assertThat(ft(1).isAtLeast(in(13)).holds()).isFalse();
    assertThat(ft(1).isMoreThan(in(13)).holds()).isFalse();
    assertThat(ft(1).isAtMost(in(13)).holds()).isTrue();
    assertThat(ft(1).isTheSameAs(in(1)).holds()).isFalse();
  }

  @Test
  void aSecondName_isAStepOfItsOwn() {
    Figure<Quantity.Length> span = ft(12).plus(in(3)).as("span_in", Units.INCH);
    Figure<Quantity.Length> reach = span.as("reach_in", Units.INCH);
    assertThat(reach.step()).isEqualTo(new Step.Applied(Operator.SAME, java.util.List.of(span)));
  }

  /** Inch-dollars and dollar-inches are the same; no formula changes where only the words do. */
  @Test
  void aUnitUnderAnotherName_changesNoFormula() {
    Figure<?> one = in(3).times(usd(2));
    Figure<?> other = usd(4).times(in(1));
    assertThat(one.plus(other).value()).isEqualTo(3 * 2 + 4 * 1);
    assertThat(other.in(one.unit()).step().operands()).isEqualTo(other.step().operands());
    Figure<?> named = other.as("paid", other.unit());
    assertThat(named.in(one.unit()).step().operands()).isEqualTo(java.util.List.of(named));
    Figure<?> given = Figure.of(4, other.unit());
    assertThat(given.in(one.unit()).step().operands()).isEqualTo(java.util.List.of(given));
    assertThat(other.in(other.unit())).isSameAs(other);
  }

  @Test
  void aUnitOfAMiddleStep_saysHowItWasMade() {
    assertThat(in(3).times(usd(2)).unit().symbol()).isEqualTo("in·$");
    assertThat(in(3).dividedBy(usd(2)).unit().symbol()).isEqualTo("in per $");
    assertThat(in(3).times(usd(2)).squared().unit().symbol()).isEqualTo("(in·$)^2");
    assertThat(in(3).times(usd(2)).squared().squareRoot().unit().symbol())
        .isEqualTo("root of (in·$)^2");
    assertThat(in(3).times(usd(2))).hasToString("6 in·$");
  }
}
