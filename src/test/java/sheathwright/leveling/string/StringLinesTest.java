package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.figure.RefusedException;

class StringLinesTest {

  private static final double DIGITS = 1e-12;

  private static double sag(double feet, double place, double weight, double tension) {
    return StringLines.stringSag(
            TightString.length(Amounts.ft(feet))
                .weight(Amounts.lbPerFt(weight))
                .tension(Amounts.lb(tension)),
            Amounts.ft(place))
        .value();
  }

  @Test
  void stringSag_isWhatTheHandbookSumGives() {
    // w L² ÷ 8 T = 0.0015 × 20² ÷ (8 × 20) ft = 0.00375 ft, worked by hand
    assertThat(sag(20, 10, 0.0015, 20)).isCloseTo(0.045, within(DIGITS));
  }

  @Test
  void stringSag_isNothingAtTheBlocksAndTheSameFromBothEnds() {
    assertThat(sag(20, 0, 0.0015, 20)).isZero();
    assertThat(sag(20, 20, 0.0015, 20)).isZero();
    assertThat(sag(20, 3, 0.0015, 20)).isCloseTo(sag(20, 17, 0.0015, 20), within(DIGITS));
  }

  @Test
  void stringSag_isNextToTheCatenary() {
    // A hanging line is a catenary: y = (T ÷ w) (cosh(w x ÷ T) − 1) from its lowest place.
    Random random = new Random(7);
    for (int i = 0; i < 1000; i++) {
      double feet = random.nextDouble(5, 60);
      double place = random.nextDouble(0, feet);
      double weight = random.nextDouble(0.0005, 0.01);
      double tension = random.nextDouble(5, 60);
      double parameter = tension / weight;
      double hang =
          12
              * parameter
              * (Math.cosh(feet / 2 / parameter) - Math.cosh((place - feet / 2) / parameter));
      assertThat(sag(feet, place, weight, tension)).isCloseTo(hang, within(1e-3 * hang + 1e-9));
    }
  }

  @Test
  void stringSag_refusesAPlaceBeyondTheString() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> sag(12, 13, 0.0015, 20))
        .withMessageContaining("before the place at");
  }

  @Test
  void dropBelowString_takesTheBlockOffAndPutsTheHangBack() {
    // 2-1/8 read, 3/4 block: 1-3/8; the string hangs 0.045 below the straight line
    assertThat(
            StringLines.dropBelowString(
                    RawReading.of(Amounts.in(2.125)).stringSag(Amounts.in(0.045)))
                .value())
        .isCloseTo(1.42, within(DIGITS));
  }

  @Test
  void dropBelowString_isNegativeWhereTheWoodStandsHigh() {
    assertThat(StringLines.dropBelowString(RawReading.of(Amounts.in(0.5))).value())
        .isEqualTo(-0.25);
  }

  @Test
  void read_isTheTwoFunctionsTogether() {
    StringLine line =
        new StringLine(
            Amounts.in(12),
            Amounts.ft(20),
            Amounts.in(0.75),
            Amounts.lbPerFt(0.0015),
            Amounts.lb(20));
    StringReading reading = line.read("A-1", Amounts.in(0), Amounts.in(12 + 120), Amounts.in(1.75));
    assertThat(reading.stringSag().value()).isCloseTo(0.045, within(DIGITS));
    assertThat(reading.drop().value()).isCloseTo(1.045, within(DIGITS));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> line.read("A-1", Amounts.in(0), Amounts.in(6), Amounts.in(1)))
        .withMessageContaining("past the string");
  }

  @Test
  void regularCenters_standAtTheSpacing() {
    assertThat(RafterCenters.regular(4, Amounts.in(0.75), Amounts.in(24)).value()).isEqualTo(72.75);
  }
}
