package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.mph;
import static sheathwright.figure.Amounts.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.published.LoadEdition;

class SheathingUpliftTest {

  private static final Asked GABLE =
      Asked.of("sheathing_uplift")
          .with("wind_mph", "130")
          .with("exposure", "B")
          .with("height_ft", "30")
          .with("rise_in_12", "4")
          .with("roof", "gable")
          .with("zone", "1")
          .with("edition", "7-16");

  private static double rise(double degrees) {
    return 12 * Math.tan(Math.toRadians(degrees));
  }

  /** A printed IRC 2018 table and a county's permit table, as the file says. */
  @ParameterizedTest(name = "{0} {1} mph, {2} {3} ft, {4} degrees, zone {5}, {6} sq ft")
  @CsvFileSource(resources = "cladding-cases.csv", numLinesToSkip = 1)
  void sheathingUplift_isThatOfWorkedCases(
      String edition,
      String wind,
      String exposure,
      String height,
      double degrees,
      String zone,
      String area,
      String direction,
      double printed,
      double tolerance) {
    Asked asked =
        GABLE
            .with("edition", edition)
            .with("wind_mph", wind)
            .with("exposure", exposure)
            .with("height_ft", height)
            .with("rise_in_12", Double.toString(rise(degrees)))
            .with("zone", zone)
            .with("area_sf", area);
    assertThat(asked.number(direction + "_psf")).isCloseTo(printed, within(tolerance));
  }

  /** On a logarithmic scale the middle between 10 and 20 sq ft is √200. Printed: IRC 2021. */
  @Test
  void area_isReadOnALogarithmicScale() {
    Asked zone = GABLE.with("zone", "2r");
    assertThat(zone.with("area_sf", Double.toString(Math.sqrt(200))).number("uplift_psf"))
        .isCloseTo((49.2 + 42.4) / 2, within(0.1));
    assertThat(zone.with("area_sf", "0.5").answer("uplift_psf"))
        .isEqualTo(zone.with("area_sf", "10").answer("uplift_psf"));
    assertThat(zone.with("area_sf", "900").answer("uplift_psf"))
        .isEqualTo(zone.with("area_sf", "100").answer("uplift_psf"));
  }

  /**
   * By equation 26.10-1 the pressure grows by K_zt, and by the IRC's Table R301.2(3) by 1.40 from
   * Exposure B to C at 30 ft: 0.00256 × 100² × 0.70059 × 0.85 is 15.2448 psf.
   */
  @Test
  void cladding_growsWithTheHillAndTheExposure() {
    Asked level =
        Asked.line(
            "cladding_pressure: edition=7-10, roof=gable, zone=1, rise_in_12=6, area_sf=10,"
                + " wind_mph=100, exposure=b, height_ft=30, enclosure=enclosed");
    for (String answer : List.of("outward_psf", "inward_psf", "outward_strength_psf")) {
      double flat = level.number(answer);
      assertThat(level.with("kzt", "1.5").number(answer)).isCloseTo(1.5 * flat, within(1e-9));
      assertThat(level.with("exposure", "c").number(answer)).isCloseTo(1.4 * flat, within(1e-9));
    }
    Asked open = level.with("enclosure", "partially-enclosed");
    assertThat(open.number("outward_strength_psf") - level.number("outward_strength_psf"))
        .as("0.55 less 0.18 of the velocity pressure")
        .isCloseTo(0.37 * 15.2448, within(1e-3));
  }

  @Test
  void pressures_sayAtWhichLevelTheyAre() {
    WindSite site = WindSite.of(LoadEdition.ASCE7_16, mph(130), Exposure.EXPOSURE_B).height(ft(30));
    RoofPlace place = RoofPlace.of(RoofShape.GABLE, pitch(4), WindZone.ZONE_1);
    SheathingUplift deck = WindPressures.sheathingUplift(site, place);
    assertThat(deck)
        .hasToString("uplift %s, inward %s, at ASD level".formatted(deck.uplift(), deck.inward()));
    CladdingPressure cladding =
        WindPressures.claddingPressure(site, place, Topography.LEVEL_GROUND, Enclosure.ENCLOSED);
    assertThat(cladding)
        .hasToString(
            "outward %s, inward %s, at ASD level".formatted(cladding.outward(), cladding.inward()));
    assertThat(CodeWind.of(mph(130), Exposure.EXPOSURE_B).speed().value()).isEqualTo(130);
    assertThat(WindZone.ZONE_1_PRIME.alsoWritten()).isEqualTo("1-prime");
  }

  /** The larger the area, the less the pull, in every zone and without a jump. */
  @Test
  void uplift_neverGrowsWithArea() {
    for (WindZone zone : WindZone.values()) {
      Asked asked = GABLE.with("zone", zone.word());
      double last = Double.POSITIVE_INFINITY;
      for (double area = 5; area < 200 && asked.refusal().isEmpty(); area *= 1.01) {
        double uplift = asked.with("area_sf", Double.toString(area)).number("uplift_psf");
        assertThat(uplift).isLessThanOrEqualTo(last);
        assertThat(last == Double.POSITIVE_INFINITY ? 0 : last - uplift).isLessThan(1);
        last = uplift;
      }
    }
  }

  /** Both sides of 7, 20 and 27 degrees, and of 45: printed for IRC 2021 and FBC 2023. */
  @ParameterizedTest(name = "{0} {1} degrees, {2}, zone {3}")
  @CsvSource({
    "7-16, 7,      gable, 1, 29.1",
    "7-16, 7.001,  gable, 1, 33.7",
    "7-16, 20,     gable, 1, 33.7",
    "7-16, 20.001, gable, 1, 26.0",
    "7-16, 27,     gable, 1, 26.0",
    "7-16, 27.001, gable, 1, 30.6",
    "7-22, 27,     hip,   2, 33.7",
    "7-22, 44.999, hip,   2, 33.7", // the more severe of the two ends
    "7-22, 44.999, hip,   3, 39.9",
    "7-22, 45,     hip,   2, 30.6",
  })
  void slope_changesTheCoefficientsJustAfterThePrintedLimit(
      String edition, double degrees, String roof, String zone, double printed) {
    assertThat(
            GABLE
                .with("edition", edition)
                .with("roof", roof)
                .with("zone", zone)
                .with("rise_in_12", degrees == 45 ? "12" : Double.toString(rise(degrees)))
                .number("uplift_psf"))
        .isCloseTo(printed, within(0.1));
  }

  /** Printed IRC factors on both sides: flat under 15 ft, straight between 20 and 25 ft. */
  @Test
  void height_multipliesByThePrintedFactor() {
    double base = GABLE.number("uplift_psf");
    assertThat(GABLE.with("height_ft", "9").number("uplift_psf") / base)
        .isCloseTo(0.82, within(1e-9));
    assertThat(GABLE.with("height_ft", "22.5").number("uplift_psf") / base)
        .isCloseTo((0.89 + 0.94) / 2, within(1e-9));
    assertThat(GABLE.with("height_ft", "60").with("exposure", "D").number("uplift_psf") / base)
        .isCloseTo(1.87, within(1e-9));
    assertThat(GABLE.with("height_ft", "15").with("edition", "7-10").answer("uplift_psf"))
        .isEqualTo(GABLE.with("height_ft", "30").with("edition", "7-10").answer("uplift_psf"));
  }

  @Test
  void uplift_isNotUnderTheCodesLeast() {
    Asked calm = GABLE.with("wind_mph", "60");
    assertThat(calm.number("uplift_psf")).isEqualTo(10);
    assertThat(calm.number("inward_psf")).isEqualTo(10);
  }

  @Test
  void zone_ofAnotherEditionIsRefusedWithTheOnesThatExist() {
    assertThat(GABLE.with("zone", "2").refusal().orElseThrow())
        .contains("hold nothing for asce7-16, gable, 7-to-20, 2", ": 1, 2e, 2n, 2r, 3e, 3r");
    assertThat(GABLE.with("roof", "hip").with("rise_in_12", "1").refusal().orElseThrow())
        .contains("asce7-16, hip: 7-to-20, 20-to-27, 27-to-45, at-45");
  }

  @Test
  void edition_isReadWithAndWithoutTheNameOfTheStandard() {
    assertThat(GABLE.with("edition", "ASCE7-16").answer("uplift_psf"))
        .isEqualTo(GABLE.answer("uplift_psf"));
    assertThat(GABLE.with("zone", "2R").answer("uplift_psf"))
        .isEqualTo(GABLE.with("zone", "2r").answer("uplift_psf"));
  }
}
