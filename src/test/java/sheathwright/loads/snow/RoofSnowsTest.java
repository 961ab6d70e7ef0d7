package sheathwright.loads.snow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;
import static sheathwright.published.LoadEdition.ASCE7_16;
import static sheathwright.published.LoadEdition.ASCE7_22;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.RefusedException;
import sheathwright.figure.YesNo;
import sheathwright.loads.LoadArguments;
import sheathwright.published.LoadEdition;

class RoofSnowsTest {

  private static final double LAST_BITS = 1e-12;
  private static final double[] THERMAL = {0.85, 1, 1.05, 1.1, 1.12, 1.15, 1.2, 1.3};

  private static RoofSnow snow(double ct, double rise, YesNo slippery, LoadEdition edition) {
    return RoofSnows.roofSnow(
        psf(100), number(1), number(ct), number(1), pitch(rise), slippery, edition);
  }

  private static double slopeFactor(double ct, double rise, YesNo slippery, LoadEdition edition) {
    RoofSnow snow = snow(ct, rise, slippery, edition);
    return snow.sloped().value() / snow.flat().value();
  }

  private static double rise(double degrees) {
    return 12 * Math.tan(Math.toRadians(degrees));
  }

  /** The curve as it is told in words. */
  private static double curve(double degrees, double start) {
    return degrees <= start ? 1 : degrees >= 70 ? 0 : (70 - degrees) / (70 - start);
  }

  /** Curves of ASCE 7-16: to C_t 1.0, to C_t 1.1, above; between two the colder. */
  private static double as2016(double ct, double degrees, boolean slippery) {
    double rough = ct <= 1 ? 30 : ct <= 1.1 ? 37.5 : 45;
    double smooth = ct <= 1 ? 5 : ct <= 1.1 ? 10 : 15;
    return curve(degrees, slippery ? smooth : rough);
  }

  /** The other copy of ASCE 7-22: to C_t 1.1, between 1.1 and 1.2, from 1.2. */
  private static double otherOf2022(double ct, double degrees, boolean slippery) {
    double rough = ct <= 1.1 ? 30 : ct < 1.2 ? 37.5 : 45;
    double smooth = ct <= 1.1 ? 5 : ct < 1.2 ? 10 : 15;
    return curve(degrees, slippery ? smooth : rough);
  }

  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void slopeFactor_isThatOfTheProse(LoadEdition edition) {
    for (double ct : THERMAL) {
      for (double degrees = 0; degrees <= 75; degrees += 0.61) {
        for (YesNo slippery : YesNo.values()) {
          double expected = as2016(ct, degrees, slippery == YES);
          if (edition == ASCE7_22) {
            expected = Math.max(expected, otherOf2022(ct, degrees, slippery == YES));
          }
          assertThat(slopeFactor(ct, rise(degrees), slippery, edition))
              .as("C_t %s at %s degrees", ct, degrees)
              .isCloseTo(expected, within(LAST_BITS * 10));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 10, 15, 30, 37.5, 45, 70})
  void slopeFactor_doesNotJumpAtABreak(double degrees) {
    for (double ct : THERMAL) {
      for (YesNo slippery : YesNo.values()) {
        double before = slopeFactor(ct, rise(degrees - 1e-7), slippery, ASCE7_16);
        double after = slopeFactor(ct, rise(degrees + 1e-7), slippery, ASCE7_16);
        assertThat(after).isCloseTo(before, within(1e-7)).isLessThanOrEqualTo(before);
      }
    }
  }

  @Test
  void snow_growsWithCold_andSlidesOffWhatIsSlippery() {
    for (double rise = 0; rise <= 40; rise += 0.5) {
      for (int i = 1; i < THERMAL.length; i++) {
        assertThat(slopeFactor(THERMAL[i], rise, NO, ASCE7_16))
            .isGreaterThanOrEqualTo(slopeFactor(THERMAL[i - 1], rise, NO, ASCE7_16) - LAST_BITS);
      }
      assertThat(slopeFactor(1.1, rise, YES, ASCE7_16))
          .isLessThanOrEqualTo(slopeFactor(1.1, rise, NO, ASCE7_16) + LAST_BITS);
    }
  }

  @Test
  void flatSnow_isTheProduct() {
    RoofSnow snow =
        RoofSnows.roofSnow(psf(55), number(0.9), number(1.2), number(1.1), pitch(0), NO, ASCE7_16);
    assertThat(snow.flat().value()).isCloseTo(0.7 * 0.9 * 1.2 * 1.1 * 55, within(1e-12));
    assertThat(snow.sloped().value()).isCloseTo(snow.flat().value(), within(1e-12));
  }

  /** Slopes in degrees as ASCE 7-16, 7.6.1 prints them beside their rise; secondary source. */
  @ParameterizedTest
  @CsvSource({"0.5, 2.38, 0.01", "7, 30.2, 0.06", "12, 45, 0.0000001", "0, 0, 0.0000001"})
  void degrees_areThePrintedOnes(double rise, double printed, double tolerance) {
    assertThat(LoadArguments.degrees(pitch(rise)).value()).isCloseTo(printed, within(tolerance));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.8, 1.1, 1.2})
  void importance_isRefusedUnder2022(double importance) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(
            () ->
                RoofSnows.roofSnow(
                        psf(40), number(1), number(1.1), number(importance), pitch(6), NO, ASCE7_22)
                    .flat()
                    .value())
        .withMessage(
            "importance is %s; under ASCE 7-22 it must be 1, for its ground snow maps, one for each risk category, hold it already"
                .formatted(importance));
  }
}
