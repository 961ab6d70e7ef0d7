package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Asked;

class SlopesTest {

  /**
   * Source: the rafter tables stamped on framing squares, length per foot of run in inches (from
   * memory).
   */
  @ParameterizedTest(name = "{0} in 12")
  @CsvSource({"4, 12.65, 17.44", "6, 13.42, 18.00", "8, 14.42, 18.76", "12, 16.97, 20.78"})
  void factors_areTheFramingSquares(double rise, double common, double hip) {
    assertThat(12 * Slopes.slopeFactor(pitch(rise)).value()).isCloseTo(common, within(0.005));
    assertThat(12 * Slopes.hipValleyFactor(pitch(rise)).value()).isCloseTo(hip, within(0.005));
  }

  /** Triangles with whole sides: 3-4-5 at 9 in 12, 5-12-13 at 5 in 12, 8-15-17 at 22.5 in 12. */
  @ParameterizedTest(name = "{0} in 12")
  @CsvSource({"9, 5, 4", "5, 13, 12", "22.5, 17, 8"})
  void slopeFactor_isExactForTrianglesWithWholeSides(double rise, double slope, double run) {
    assertThat(Slopes.slopeFactor(pitch(rise)).value()).isCloseTo(slope / run, within(1e-12));
  }

  /**
   * A hip runs as the diagonal of a square under it: its factor squared is the slope's squared and
   * one more.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 3.5, 7, 12, 24})
  void hipValleyFactor_isTheDiagonalOfTheSlope(double rise) {
    double slope = Slopes.slopeFactor(pitch(rise)).value();
    double hip = Slopes.hipValleyFactor(pitch(rise)).value();
    assertThat(hip).isCloseTo(Math.hypot(slope, 1), within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "slope_factor: rise_in_12=25",
        "hip_valley_factor: rise_in_12=25",
        "slope_length: run_ft=15, rise_in_12=25"
      })
  void aWall_isNoSlope(String call) {
    assertThat(Asked.line(call).refusal().orElseThrow()).startsWith("rise_in_12 is 25");
  }

  @Test
  void slopeLength_isTheRunTimesTheFactorInAnyUnit() {
    assertThat(Slopes.slopeLength(ft(15), pitch(6)).value())
        .isCloseTo(15 * Math.sqrt(1.25), within(1e-12))
        .isEqualTo(Slopes.slopeLength(in(180), pitch(6)).value());
  }
}
