package sheathwright.loads.snow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;
import static sheathwright.published.LoadEdition.ASCE7_10;
import static sheathwright.published.LoadEdition.ASCE7_16;
import static sheathwright.published.LoadEdition.ASCE7_22;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.RefusedException;
import sheathwright.figure.YesNo;
import sheathwright.published.LoadEdition;

class UnbalancedSnowsTest {

  private static UnbalancedSnow snow(
      double ground, double rise, double run, YesNo simple, double wind, LoadEdition edition) {
    return UnbalancedSnows.unbalancedSnow(
        GroundSnow.of(psf(ground), edition),
        psf(0.7 * ground),
        number(1),
        SnowSlope.rise(pitch(rise)).eaveToRidge(ft(run)).simpleRafters(simple),
        number(wind));
  }

  private static double height(double ground, double run, double wind, boolean is2022) {
    double fetch = Math.max(run, 20);
    double density = Math.min(30, 0.13 * ground + 14);
    return is2022
        ? 1.5
            * Math.exp(
                (0.74 * Math.log(ground)
                        + 0.70 * Math.log(fetch)
                        + 1.7 * Math.log(wind)
                        - Math.log(density))
                    / 2)
        : 0.43 * Math.cbrt(fetch) * Math.sqrt(Math.sqrt(ground + 10)) - 1.5;
  }

  /** The rule in words: copies of ASCE 7-16, 7.6.1, and of the drift heights. */
  @ParameterizedTest
  @EnumSource(LoadEdition.class)
  void unbalancedSnow_isThatOfTheRule(LoadEdition edition) {
    for (double ground : new double[] {1, 20, 45, 123, 124, 300}) {
      for (double rise : new double[] {0, 0.49, 0.5, 3, 7, 7.1, 14}) {
        for (double run : new double[] {6, 20, 20.5, 38, 200}) {
          for (YesNo simple : YesNo.values()) {
            assertRule(ground, rise, run, simple, edition);
          }
        }
      }
    }
  }

  private static void assertRule(
      double ground, double rise, double run, YesNo simple, LoadEdition edition) {
    UnbalancedSnow snow = snow(ground, rise, run, simple, 0.45, edition);
    double even = 0.7 * ground;
    boolean isAsked = rise >= 0.5 && rise <= 7;
    boolean isAlone = isAsked && run <= 20 && simple == YES;
    boolean isDrift = isAsked && !isAlone;
    double hd = height(ground, run, 0.45, edition == ASCE7_22);
    double spread = Math.sqrt(12 / rise);
    double density = Math.min(30, 0.13 * ground + 14);
    assertThat(snow.windward().value())
        .isCloseTo(isAlone ? 0 : isDrift ? 0.3 * even : even, within(1e-9));
    assertThat(snow.leeward().value()).isCloseTo(isAlone ? ground : even, within(1e-9));
    assertThat(snow.surcharge().value())
        .isCloseTo(isDrift ? hd * density / spread : 0, within(1e-9));
    assertThat(snow.surchargeWidth().value())
        .isCloseTo(isDrift ? Math.min(run, 8 * hd * spread / 3) : 0, within(1e-9));
    assertThat(snow.driftHeight().value()).isCloseTo(hd, within(1e-9));
    assertThat(snow.snowDensity().value()).isCloseTo(density, within(1e-9));
  }

  /** Surcharge times width is 8/3 γ h_d², however steep: the drift is the same heap of snow. */
  @Test
  void drift_weighsTheSameOnEverySlope() {
    for (double rise = 0.5; rise <= 7; rise += 0.5) {
      UnbalancedSnow snow = snow(60, rise, 300, YES, 0.65, ASCE7_16);
      double hd = snow.driftHeight().value();
      assertThat(snow.surcharge().value() * snow.surchargeWidth().value())
          .isCloseTo(8.0 / 3 * (0.13 * 60 + 14) * hd * hd, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "6,   14,  yes, leeward-alone",
    "6,   20,  yes, leeward-alone",
    "6,   20,  no,  ridge-drift",
    "6,   21,  yes, ridge-drift",
    "0.4, 14,  yes, not-asked",
    "8,   30,  no,  not-asked",
  })
  void unbalancedCase_isNamed(double rise, double run, String simple, String named) {
    YesNo answer = simple.equals("yes") ? YES : NO;
    assertThat(snow(40, rise, run, answer, 0.65, ASCE7_10).unbalanced().plain()).isEqualTo(named);
  }

  /** With all factors 1 or thereabouts a house rafter bears more unbalanced than even snow. */
  @Test
  void narrowRoof_bearsTheGroundSnowWhichIsMoreThanTheEven() {
    for (double ground = 5; ground <= 100; ground += 5) {
      UnbalancedSnow snow = snow(ground, 6, 14, YES, 0.65, ASCE7_16);
      assertThat(snow.leeward().value()).isEqualTo(ground).isGreaterThan(0.7 * 1.1 * ground);
    }
  }

  @Test
  void importance_multipliesTheGroundSnowOfANarrowRoof() {
    UnbalancedSnow snow =
        UnbalancedSnows.unbalancedSnow(
            GroundSnow.of(psf(40), ASCE7_16),
            psf(30),
            number(1.2),
            SnowSlope.rise(pitch(6)).eaveToRidge(ft(14)),
            number(0.65));
    assertThat(snow.leeward().value()).isCloseTo(48, within(1e-12));
  }

  @Test
  void importance_isRefusedWithADrift() {
    UnbalancedSnow snow =
        UnbalancedSnows.unbalancedSnow(
            GroundSnow.of(psf(40), ASCE7_16),
            psf(30),
            number(1.2),
            SnowSlope.rise(pitch(6)).eaveToRidge(ft(40)),
            number(0.65));
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> snow.surcharge().value())
        .withMessage(
            "importance is 1.2; with a drift below the ridge it must be 1, for how it enters the"
                + " height of a drift was not read");
  }

  @Test
  void everyArgument_isHeldToItsLimitsInEveryCase() {
    UnbalancedSnow wind = snow(40, 6, 14, YES, 0.9, ASCE7_16);
    assertThat(wind.driftHeight().refusal().orElseThrow().reason())
        .startsWith("winter_wind is 0.9; it must be from 0.2 to 0.7");
    UnbalancedSnow even =
        UnbalancedSnows.unbalancedSnow(
            GroundSnow.of(psf(40), ASCE7_16),
            psf(-1),
            number(1),
            SnowSlope.rise(pitch(6)).eaveToRidge(ft(14)),
            number(0.65));
    assertThat(even.leeward().refusal().orElseThrow().reason())
        .startsWith("sloped_psf is -1; it must be from 0 to 300");
  }
}
