package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The one rounding rule, against exact decimal arithmetic. */
class RoundingTest {

  private static final int TRIALS = 20_000;

  @Test
  void halfUp_givesEveryPriceTimesRateItsExactCent() {
    Random random = new Random(20_000);
    int halfCents = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      // Prices end in a nickel and rates in a half per cent, so that many products end in half a
      // cent.
      BigDecimal price = BigDecimal.valueOf(5L * random.nextInt(200_000), 2);
      BigDecimal rate = BigDecimal.valueOf(5L * random.nextInt(600), 3);
      BigDecimal product = price.multiply(rate);
      halfCents += isHalfACent(product) ? 1 : 0;

      assertThat(Rounding.halfUp(price.doubleValue() * rate.doubleValue(), 2))
          .as("%s × %s", price, rate)
          .isEqualTo(product.setScale(2, RoundingMode.HALF_UP).doubleValue());
    }
    assertThat(halfCents).isGreaterThan(TRIALS / 20);
  }

  @Test
  void toCents_roundsAsTheRuleDoes() {
    Random random = new Random(7);
    for (int trial = 0; trial < 1_000; trial++) {
      BigDecimal price = BigDecimal.valueOf(5L * random.nextInt(200_000), 2);
      BigDecimal rate = BigDecimal.valueOf(5L * random.nextInt(600), 3);
      Figure<?> product =
          Figure.of(price.doubleValue(), Units.USD)
              .times(Figure.of(rate.doubleValue(), Units.RATIO))
              .in(Units.USD)
              .toCents();
      assertThat(product.value())
          .isEqualTo(price.multiply(rate).setScale(2, RoundingMode.HALF_UP).doubleValue());
    }
  }

  @Test
  void up_givesEveryCountItsExactCeiling() {
    Random random = new Random(32);
    for (int trial = 0; trial < TRIALS; trial++) {
      int sheets = 1 + random.nextInt(400);
      // A deck of exactly so many sheets with waste: area × (1 + waste) ÷ 32 in decimals.
      BigDecimal waste = BigDecimal.valueOf(random.nextInt(40), 2);
      BigDecimal area = BigDecimal.valueOf(32L * sheets);
      BigDecimal exact =
          area.multiply(BigDecimal.ONE.add(waste)).divide(BigDecimal.valueOf(32)); // ends in .xx
      double computed = area.doubleValue() * (1 + waste.doubleValue()) / 32;
      assertThat(Rounding.up(computed))
          .as("%s × 1 + %s ÷ 32", area, waste)
          .isEqualTo(exact.setScale(0, RoundingMode.CEILING).doubleValue());
      assertThat(Rounding.down(computed))
          .isEqualTo(exact.setScale(0, RoundingMode.FLOOR).doubleValue());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1.005,  2, 1.01", // below 1.005 as a double, yet a person's half
    "2.675,  2, 2.68",
    "1.0049, 2, 1.00",
    "-1.005, 2, -1.01", // away from zero, as ROUND does
    "0.5,    0, 1",
    "1.5,    0, 2",
    "2.5,    0, 3",
    "204.4999999999, 0, 204",
    "0,      2, 0",
  })
  void halfUp_takesHalvesAwayFromZero(double number, int decimals, double rounded) {
    assertThat(Rounding.halfUp(number, decimals)).isEqualTo(rounded);
  }

  @ParameterizedTest
  @CsvSource({
    "22.01,      23, 22",
    "22,         22, 22",
    "22.0000004, 22, 22", // dust beyond the sixth decimal
    "22.0000006, 23, 22",
    "21.9999996, 22, 22",
    "21.9999994, 22, 21",
    "0.000001,    1,  0",
    "0,           0,  0",
    "-1.2,       -2, -1", // ROUNDUP goes away from zero, ROUNDDOWN toward it
  })
  void upAndDown_sweepTheDustAwayFirst(double number, double up, double down) {
    assertThat(Rounding.up(number)).isEqualTo(up);
    assertThat(Rounding.down(number)).isEqualTo(down);
  }

  @Test
  void up_isNotFooledByBinaryFractions() {
    assertThat(3 * 1.1).isGreaterThan(3.3); // the trap
    assertThat(Rounding.up(3 * 1.1 / 1.1)).isEqualTo(3);
    assertThat(Rounding.up(0.1 * 3 / 0.3)).isEqualTo(1);
  }

  @Test
  void toFifteenDigits_dropsWhatACellDoesNotShow() {
    assertThat(Rounding.toFifteenDigits(0.1 + 0.2)).isEqualTo(0.3);
    assertThat(Rounding.toFifteenDigits(1234567.12345678)).isEqualTo(1234567.12345678);
    assertThat(Rounding.toFifteenDigits(1d / 3)).isEqualTo(0.333333333333333);
  }

  private static boolean isHalfACent(BigDecimal dollars) {
    return dollars
            .movePointRight(2)
            .remainder(BigDecimal.ONE)
            .abs()
            .compareTo(new BigDecimal("0.5"))
        == 0;
  }
}
