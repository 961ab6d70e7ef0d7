package sheathwright.fastening.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class NailLateralsTest {

  private static Asked nail(
      String diameter, double length, String side, String gravity, String fyb) {
    return Asked.of("nail_lateral")
        .with("diameter_in", diameter)
        .with("length_in", Double.toString(length))
        .with("side_thickness_in", side)
        .with("side_gravity", gravity)
        .with("main_gravity", gravity)
        .with("bending_yield_psi", fyb);
  }

  /** NDS Table 12N prints whole pounds; each line says whether it was read or remembered. */
  @ParameterizedTest(name = "{0} in through {1} in, G {2}: {4} lb, {5}")
  @CsvFileSource(resources = "nds-table-12n.csv", useHeadersInDisplayName = true)
  void nailLateral_isThePrintedTable(
      String diameter, double side, String gravity, String fyb, double printed, String mark) {
    double length = side + 10 * Double.parseDouble(diameter);
    assertThat(nail(diameter, length, Double.toString(side), gravity, fyb).number("lateral_lb"))
        .isCloseTo(printed, within(0.501));
  }

  /** NDS 12.3 worked by others: a 10d common through two 1-1/2 in plies of Douglas fir-larch. */
  @Test
  void nailLateral_isTheWorkedPairOfPlies() {
    Asked plies = nail("0.148", 3, "1.5", "0.5", "90000");
    assertThat(plies.number("lateral_lb")).isCloseTo(118, within(0.7));
    assertThat(plies.answer("mode")).isEqualTo("IV");
  }

  /** NDS 12.1.6: nothing may be counted under 6 diameters of penetration, here 0.6 in. */
  @Test
  void nailLateral_isRefusedUnderSixDiameters() {
    assertThat(nail("0.1", 2.1, "1.5", "0.5", "100000").refusal()).isEmpty();
    assertThat(nail("0.1", 2.0999, "1.5", "0.5", "100000").refusal().orElseThrow())
        .startsWith("the nail reaches less than 6 diameters into the main member");
  }

  /**
   * NDS Table 12.3.1B: 2.2 up to 0.17 in, then 10 D + 0.5, which joins it; mode IV goes as D² ÷
   * R_d.
   */
  @ParameterizedTest
  @CsvSource({"0.16, 2.2", "0.17, 2.2", "0.18, 2.3", "0.2, 2.5", "0.24, 2.9"})
  void reductionTerm_growsFromThinNailsOn(String diameter, double reduction) {
    double d = Double.parseDouble(diameter);
    Asked thick = nail(diameter, 4 + 14 * d, "4", "0.5", "90000");
    assertThat(thick.answer("mode")).isEqualTo("IV");
    assertThat(thick.number("lateral_lb"))
        .isCloseTo(d * d / reduction * Math.sqrt(2 * 4650 * 90000.0 / 6), within(1e-9));
  }

  /** NDS Table 12.3.3 prints bearing to 50 psi: 4650 at G 0.50, 5550 at 0.55, 3350 at 0.42. */
  @ParameterizedTest
  @CsvSource({"0.5, 4650", "0.55, 5550", "0.43, 3500", "0.42, 3350", "0.46, 4000", "0.36, 2550"})
  void bearing_isRoundedAsPrinted(String gravity, double printed) {
    Asked crushed = nail("0.1", 3.2, "0.1", gravity, "250000");
    assertThat(crushed.answer("mode")).isEqualTo("Is");
    assertThat(crushed.number("lateral_lb")).isCloseTo(0.1 * 0.1 * printed / 2.2, within(1e-9));
  }
}
