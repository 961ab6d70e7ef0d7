package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** Overhangs against q = 0.00256 Kz Kd V² written apart, Kz 0.70059 at 30 ft in Exposure B. */
class OverhangUpliftTest {

  private static Asked overhang(String edition, String zone, String rise, double wind) {
    return Asked.of("overhang_uplift")
        .with("wind_mph", "" + wind)
        .with("exposure", "b")
        .with("height_ft", "30")
        .with("rise_in_12", rise)
        .with("roof", "gable")
        .with("zone", zone)
        .with("edition", edition);
  }

  private static double allowable(double wind, double coefficient) {
    return 0.6 * 0.00256 * 0.70059 * 0.85 * wind * wind * coefficient;
  }

  /** ASCE 7-10, Figures 30.4-2A to C, from memory; 2.2 and 3.7 read second hand. */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 10, 1.7", "1, 2, 100, 1.6", "1, 3, 10, 2.8", "1, 3, 100, 0.8",
    "4, 2, 10, 2.2", "4, 3, 10, 3.7", "4, 3, 100, 2.5", "6, 2, 100, 2.2",
    "8, 2, 10, 2.0", "12, 3, 100, 1.8"
  })
  void asce10_isItsFigure(String rise, String zone, String area, double coefficient) {
    for (double wind : new double[] {115, 130, 170}) {
      assertThat(overhang("7-10", zone, rise, wind).with("area_sf", area).number("overhang_psf"))
          .isCloseTo(Math.max(10, allowable(wind, coefficient)), within(1e-6));
    }
  }

  /** ASCE 7-16 and 7-22: the zone's coefficient above and the wall's 1.0 below. */
  @ParameterizedTest
  @CsvSource({
    "7-16, 2e, 4, 3.0",
    "7-16, 2n, 4, 4.0",
    "7-16, 3r, 4, 4.6",
    "7-16, 3e, 6, 3.5",
    "7-16, 3e, 9, 3.5",
    "7-22, 2, 1, 3.3",
    "7-22, 3, 1, 4.2"
  })
  void later_isRoofAboveAndWallBelow(String edition, String zone, String rise, double coefficient) {
    double expected = allowable(130, coefficient);
    assertThat(overhang(edition, zone, rise, 130).number("overhang_psf"))
        .isCloseTo(expected, within(0.002 * expected));
  }

  /** By the later editions an overhang is lifted more than the roof beside it, by 1.0 less 0.18. */
  @ParameterizedTest
  @CsvSource({"7-16, 3, 1", "7-16, 3e, 5", "7-16, 2n, 12", "7-22, 3, 5", "7-22, 2, 8"})
  void later_isMoreThanTheRoofBesideIt(String edition, String zone, String rise) {
    Asked roof =
        Asked.of("sheathing_uplift")
            .with("wind_mph", "140")
            .with("exposure", "b")
            .with("height_ft", "30")
            .with("rise_in_12", rise)
            .with("roof", "gable")
            .with("zone", zone)
            .with("edition", edition);
    assertThat(overhang(edition, zone, rise, 140).number("overhang_psf"))
        .isCloseTo(roof.number("uplift_psf") + allowable(140, 0.82), within(1e-6));
  }

  @Test
  void itIsNeverLessThanTheCodesLeast() {
    assertThat(overhang("7-10", "3", "1", 50).number("overhang_psf")).isEqualTo(10);
  }

  @Test
  void theFieldOfASteepRoof_hasNoOverhangFigure() {
    assertThat(overhang("7-10", "1", "5", 130).refusal()).isPresent();
  }
}
