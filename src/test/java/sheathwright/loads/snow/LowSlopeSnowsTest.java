package sheathwright.loads.snow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.psf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.loads.RiskCategory;
import sheathwright.published.LoadEdition;

class LowSlopeSnowsTest {

  private static final double[] IMPORTANCE = {0.8, 1, 1.1, 1.2};
  private static final double[] MOST_2022 = {25, 30, 35, 40};

  /** The rules in words: copies of ASCE 7-16, 7.3.4, and ASCE 7-22, 7.3.3. */
  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void minimumSnow_isThatOfTheRule(LoadEdition edition) {
    for (RiskCategory risk : RiskCategory.values()) {
      for (double ground = 0; ground <= 60; ground += 2.5) {
        for (double rise = 0; rise <= 12; rise += 0.5) {
          double minimum = minimum(ground, risk, rise, edition);
          if (Math.toDegrees(Math.atan2(rise, 12)) >= 15) {
            assertThat(minimum).isZero();
          } else if (edition == LoadEdition.ASCE7_22) {
            assertThat(minimum).isEqualTo(Math.min(ground, MOST_2022[risk.ordinal()]));
          } else {
            double importance = IMPORTANCE[risk.ordinal()];
            double expected = ground <= 20 ? importance * ground : 20 * importance;
            assertThat(minimum).isCloseTo(expected, within(1e-12));
          }
        }
      }
    }
  }

  @Test
  void minimumSnow_endsAt15Degrees() {
    double rise = 12 * Math.tan(Math.toRadians(15));
    assertThat(minimum(30, RiskCategory.RISK_II, rise - 1e-6, LoadEdition.ASCE7_16)).isEqualTo(20);
    assertThat(minimum(30, RiskCategory.RISK_II, rise + 1e-6, LoadEdition.ASCE7_16)).isZero();
  }

  /** The rule in words; the ground snow to which ASCE 7-22 adds rain is from memory. */
  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void rainOnSnow_isThatOfTheRule(LoadEdition edition) {
    boolean is2022 = edition == LoadEdition.ASCE7_22;
    for (RiskCategory risk : RiskCategory.values()) {
      double most = is2022 ? MOST_2022[risk.ordinal()] : 20;
      for (double ground : new double[] {0, 0.1, 10, 20, 20.1, 25, 29, 36, 40, 41}) {
        for (double rise : new double[] {0, 0.1, 0.25, 0.5, 1, 3}) {
          for (double run : new double[] {1, 30, 60, 119, 120, 400}) {
            boolean isAdded =
                ground > 0 && ground <= most && Math.toDegrees(Math.atan2(rise, 12)) < run / 50;
            assertThat(
                    LowSlopeSnows.rainOnSnow(
                            GroundSnow.of(psf(ground), edition), risk, pitch(rise), ft(run))
                        .value())
                .isEqualTo(isAdded ? is2022 ? 8 : 5 : 0);
          }
        }
      }
    }
  }

  private static double minimum(
      double ground, RiskCategory risk, double rise, LoadEdition edition) {
    return LowSlopeSnows.minimumSnow(GroundSnow.of(psf(ground), edition), risk, pitch(rise))
        .value();
  }
}
