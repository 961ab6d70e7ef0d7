package sheathwright.loads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.sqft;
import static sheathwright.published.LoadEdition.ASCE7_16;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.published.LoadEdition;

class RoofLivesTest {

  private static final double LAST_BITS = 1e-12;

  private static double live(double area, double rise) {
    return RoofLives.roofLiveLoad(sqft(area), pitch(rise), ASCE7_16).value();
  }

  private static double code(double area, double rise) {
    return RoofLives.codeRoofLive(sqft(area), pitch(rise)).value();
  }

  /** Between the two printed ends of a reduction, and flat outside them. */
  private static double between(double at, double from, double to) {
    double share = Math.min(1, Math.max(0, (at - from) / (to - from)));
    return 1 * (1 - share) + 0.6 * share;
  }

  /** The ends are printed: 1 at 200 sq ft and 4 in 12, 0.6 at 600 sq ft and 12 in 12. */
  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void roofLiveLoad_liesStraightBetweenThePrintedEnds(LoadEdition edition) {
    for (double area = 0; area <= 900; area += 12.5) {
      for (double rise = 0; rise <= 20; rise += 0.25) {
        double expected = Math.max(12, 20 * between(area, 200, 600) * between(rise, 4, 12));
        assertThat(RoofLives.roofLiveLoad(sqft(area), pitch(rise), edition).value())
            .isCloseTo(expected, within(LAST_BITS * 20));
      }
    }
  }

  @Test
  void roofLiveLoad_fallsWithAreaAndSlopeAndStaysFrom12To20() {
    for (double area = 0; area < 900; area += 7) {
      for (double rise = 0; rise < 16; rise += 0.3) {
        assertThat(live(area, rise)).isBetween(12.0, 20.0);
        assertThat(live(area + 7, rise)).isLessThanOrEqualTo(live(area, rise) + LAST_BITS);
        assertThat(live(area, rise + 0.3)).isLessThanOrEqualTo(live(area, rise) + LAST_BITS);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"200, 3", "600, 3", "100, 4", "100, 12"})
  void roofLiveLoad_doesNotJumpAtAnEnd(double area, double rise) {
    double at = live(area, rise);
    assertThat(live(area + 1e-9, rise + 1e-9)).isCloseTo(at, within(1e-7));
    assertThat(live(area - 1e-9, rise - 1e-9)).isCloseTo(at, within(1e-7));
  }

  /** IRC 2018, Table R301.6; three of these cells were read, one of the nine is from memory. */
  @ParameterizedTest
  @CsvSource({
    "0,   0,    20", "200, 3.99, 20", "201, 3,  16", "600, 0,  16", "601, 2,  12",
    "10,  4,    16", "200, 11.9, 16", "300, 4,  14", "600, 11, 14", "900, 8,  12",
    "200, 12,   12", "600, 12,   12", "601, 18, 12",
  })
  void codeRoofLive_isThePrintedCell(double area, double rise, double printed) {
    assertThat(code(area, rise)).isEqualTo(printed);
  }

  /** The steps of the code and the slopes of the standard come from the same rule. */
  @Test
  void codeRoofLive_meetsTheStandardAtTheEndsOfTheTable() {
    assertThat(code(0, 0)).isEqualTo(live(0, 0));
    assertThat(code(1000, 0)).isEqualTo(live(1000, 0));
    assertThat(code(0, 12)).isCloseTo(live(0, 12), within(LAST_BITS * 12));
    assertThat(code(1000, 12)).isEqualTo(live(1000, 12));
  }
}
