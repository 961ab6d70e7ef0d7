package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psi;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Working;

/** The stability factor, found a second time as the root of the curve that it lies on. */
class LateralStabilityTest {

  private static Asked beam(double unbraced, double depth, double thickness, double bending) {
    return Asked.of("beam_stability")
        .with("unbraced_in", String.valueOf(unbraced))
        .with("depth_in", String.valueOf(depth))
        .with("thickness_in", String.valueOf(thickness))
        .with("min_modulus_psi", "580000")
        .with("bending_psi", String.valueOf(bending));
  }

  @ParameterizedTest
  @CsvSource({
    "12,  7.25,  1.5, 1400",
    "48,  7.25,  1.5, 1400",
    "120, 9.25,  1.5, 2000",
    "200, 11.25, 1.5, 900",
    "300, 5.5,   1.5, 1"
  })
  void factor_liesOnTheCurve(double unbraced, double depth, double thickness, double bending) {
    double effective = unbraced < 7 * depth ? 2.06 * unbraced : 1.63 * unbraced + 3 * depth;
    double f = 1.2 * 580_000 * thickness * thickness / (effective * depth) / bending;
    // 0.95 x² − (1 + F) x + F is F at 0 and −0.05 at 1, so it has one root between.
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double x = (low + high) / 2;
      boolean isAbove = 0.95 * x * x - (1 + f) * x + f > 0;
      low = isAbove ? x : low;
      high = isAbove ? high : x;
    }
    assertThat(beam(unbraced, depth, thickness, bending).number("stability_factor"))
        .isCloseTo(low, within(1e-9));
  }

  @Test
  void factor_fallsAsBracesComeApartAndNeverPassesOne() {
    double last = 1;
    for (double unbraced : new double[] {1, 6, 24, 48, 96, 150}) {
      double factor = beam(unbraced, 11.25, 1.5, 1400).number("stability_factor");
      assertThat(factor).isLessThan(last).isPositive();
      last = factor;
    }
  }

  private static double longest(double depth, double stress) {
    return LateralStability.longestUnbraced(
            RafterSection.of(in(1.5), in(depth)), psi(580_000), psi(1400), psi(stress))
        .value();
  }

  /** Where it may lie open so far, the stability factor there is just the share that is wanted. */
  @ParameterizedTest
  @CsvSource({"7.25, 700", "7.25, 1300", "11.25, 1000", "5.5, 1350", "9.25, 1390", "11.25, 1380"})
  void longestUnbraced_isWhereTheFactorIsJustEnough(double depth, double stress) {
    double open = longest(depth, stress);
    assertThat(beam(open, depth, 1.5, 1400).number("stability_factor"))
        .isCloseTo(stress / 1400, within(1e-9));
  }

  /** NDS 3.3.3.7: R_B of 50 at most, and l_e d ÷ b² is 2500 there: l_e = 500 in for a 2x12. */
  @Test
  void longestUnbraced_endsAtTheGreatestSlenderness() {
    assertThat(longest(11.25, 1)).isCloseTo((500 - 3 * 11.25) / 1.63, within(1e-9));
    assertThat(longest(11.25, 1400)).as("no length is open to the full stress").isZero();
    assertThat(longest(11.25, 1500)).isZero();
  }

  /** Equation 3.3-6 turned round, with its clauses. */
  @Test
  void longestUnbraced_showsWhereItComesFrom() {
    assertThat(
            Working.of(
                LateralStability.longestUnbraced(
                    RafterSection.of(in(1.5), in(7.25)), psi(580_000), psi(1400), psi(1300))))
        .contains("(1 − 0.95 × x) ÷ ", "NDS 2018, 3.3.3.8 ", "NDS 2018, equation 3.3-5 ");
  }

  @Test
  void effectiveLength_hasNoLargeStepAtSevenDepths() {
    // 2.06 × 7 = 14.42 against 1.63 × 7 + 3 = 14.41 depths.
    double below = beam(69.999, 10, 1.5, 1400).number("effective_length_in");
    double above = beam(70, 10, 1.5, 1400).number("effective_length_in");
    assertThat(below).isCloseTo(144.2, within(0.01));
    assertThat(above).isCloseTo(144.1, within(0.01));
  }
}
