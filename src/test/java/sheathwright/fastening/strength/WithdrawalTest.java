package sheathwright.fastening.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class WithdrawalTest {

  private static double held(String function, String gravity, String diameter) {
    return Asked.of(function)
        .with("specific_gravity", gravity)
        .with("diameter_in", diameter)
        .number("withdrawal_lb_per_in");
  }

  private static double nail(String shank, String gravity, String diameter) {
    return Asked.of("nail_withdrawal")
        .with("shank", shank)
        .with("specific_gravity", gravity)
        .with("diameter_in", diameter)
        .number("withdrawal_lb_per_in");
  }

  /** Every cell of NDS Table 12.2A, which prints whole pounds. */
  @ParameterizedTest(name = "{0} in, G {1}")
  @CsvFileSource(resources = "nds-table-12.2a.csv", useHeadersInDisplayName = true)
  void lagWithdrawal_isThePrintedTable(String diameter, String gravity, double printed) {
    assertThat(held("lag_withdrawal", gravity, diameter)).isCloseTo(printed, within(0.501));
  }

  /** Worked by others from the same equations: the whole pounds that the tables would print. */
  @ParameterizedTest(name = "{0} {1} in, G {2}")
  @CsvFileSource(resources = "withdrawal-values.csv", useHeadersInDisplayName = true)
  void withdrawal_isTheWorkedValue(
      String fastener, String diameter, String gravity, double value, double whole) {
    double found =
        fastener.equals("wood-screw")
            ? held("screw_withdrawal", gravity, diameter)
            : nail(fastener, gravity, diameter);
    assertThat(found).isCloseTo(value, within(fastener.equals("wood-screw") ? 0.051 : 0.0051));
    assertThat((double) Math.round(found)).isEqualTo(whole);
  }

  @ParameterizedTest(name = "{0} {2} in, G {1}")
  @CsvSource({
    // a design example of the specification's publisher, secondary source
    "smooth, 0.42, 0.131, 20.667, 0.01",
    // a worked test in a public repository, NDS 2018 12.2-3
    "smooth, 0.50, 0.131, 31.95, 0.02",
    // by hand from the equations
    "smooth, 0.55, 0.131, 40.56, 0.01",
    "ring, 0.42, 0.113, 35.88, 0.01",
    "ring, 0.50, 0.113, 50.85, 0.01",
    "ring, 0.55, 0.113, 61.53, 0.01",
  })
  void nailWithdrawal_isTheWorkedExample(
      String shank, String gravity, String diameter, double pounds, double tolerance) {
    assertThat(nail(shank, gravity, diameter)).isCloseTo(pounds, within(tolerance));
  }

  /** By hand: G 0.36 is 0.6 squared, so that G^1.5 is 0.216; 465 × 0.216 × 0.1 = 10.044. */
  @Test
  void nailWithdrawal_ofStainlessIsByHand() {
    assertThat(nail("stainless", "0.36", "0.1")).isCloseTo(10.044, within(1e-9));
  }

  /** G 0.25 is 0.5 squared, so that G^2.5 is 1 ÷ 32; D 0.0625 is 0.5^4, so that D^0.75 is 1 ÷ 8. */
  @Test
  void withdrawal_isExactWherePowersComeOutEven() {
    assertThat(nail("smooth", "0.25", "0.128")).isCloseTo(1380 * 0.128 / 32, within(1e-9));
    assertThat(held("lag_withdrawal", "0.25", "0.3164062500")) // 0.75^4, so D^0.75 is 0.75^3
        .isCloseTo(1800 * 0.125 * 0.421875, within(1e-9));
  }

  /** The laboratory's mean is 6900 G^2.5 D for a smooth nail: the value keeps five in reserve. */
  @Test
  void nailWithdrawal_isAFifthOfTheLaboratorysMean() {
    assertThat(nail("smooth", "0.36", "0.131") * 5)
        .isCloseTo(6900 * Math.pow(0.36, 2.5) * 0.131, within(1e-9));
  }
}
