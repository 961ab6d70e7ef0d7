package sheathwright.loads;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** What stands beyond the numbers that a rule was made for is refused where it would count. */
class LoadsRefusalsTest {

  /** The ranges are the texts' own; which numbers stand in them is StatedRangesTest's. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "velocity_pressure: edition=7-16, exposure=b, wind_mph=115, height_ft=18, kd=0.79 | kd is",
        "allowable_pressure: strength_psf=1001 | strength_psf is",
        "zone_width: least_width_ft=301, height_ft=20 | least_width_ft is",
        "minimum_snow: edition=7-16, risk_category=ii, ground_snow_psf=30, rise_in_12=49 |"
            + " rise_in_12 is",
        "rain_on_snow: edition=7-16, risk_category=ii, ground_snow_psf=15, rise_in_12=49,"
            + " eave_to_ridge_ft=20 | rise_in_12 is",
        "rain_on_snow: edition=7-16, risk_category=ii, ground_snow_psf=15, rise_in_12=0.25,"
            + " eave_to_ridge_ft=501 | eave_to_ridge_ft is",
        "roof_snow: edition=7-16, importance=1, exposure_factor=1, ground_snow_psf=40,"
            + " thermal_factor=1, slippery=no, rise_in_12=49 | rise_in_12 is",
        "snow_thermal_factor: roof_warmth=heated, edition=7-22 |"
            + " the thermal factor of a roof that is heated was not read for certain",
        "unbalanced_snow: edition=7-16, ground_snow_psf=40, sloped_psf=28, rise_in_12=4,"
            + " eave_to_ridge_ft=14, simple_rafters=yes, importance=1.3 | importance is",
        "unbalanced_snow: edition=7-16, ground_snow_psf=0.5, sloped_psf=28, rise_in_12=4,"
            + " eave_to_ridge_ft=14, simple_rafters=yes | ground_snow_psf is",
        "layer_load: material=asphalt-shingles, layers=2.5 | layers is",
        "layer_load: material=gypsum-board, layers=1, thickness_in=25 | thickness_in is",
        "layer_load: material=gypsum-board, layers=1 | gypsum-board goes by its thickness",
        "layer_load: material=asphalt-shingles, layers=1, thickness_in=1 |"
            + " asphalt-shingles goes by the layer",
        "framing_load: thickness_in=8.5, depth_in=5.5, spacing_in=16 | thickness_in is",
        "framing_load: thickness_in=1.5, depth_in=24.5, spacing_in=16 | depth_in is",
        "framing_load: thickness_in=1.5, depth_in=5.5, spacing_in=121 | spacing_in is",
        "framing_load: thickness_in=1.5, depth_in=5.5, spacing_in=16, density_pcf=71 |"
            + " density_pcf is",
        "dead_on_projection: slope_load_psf=201, rise_in_12=6 | slope_load_psf is",
        "dead_on_projection: slope_load_psf=10, rise_in_12=49 | rise_in_12 is",
        "load_combinations: dead_psf=10, roof_live_psf=20, snow_psf=30, uplift_psf=501,"
            + " edition=7-22 | uplift_psf is",
        "roof_live_load: tributary_sf=100001, rise_in_12=6, edition=7-16 | tributary_sf is",
        "roof_live_load: tributary_sf=30, rise_in_12=49, edition=7-16 | rise_in_12 is",
        "code_roof_live: tributary_sf=100001, rise_in_12=6 | tributary_sf is",
        "code_roof_live: tributary_sf=30, rise_in_12=49 | rise_in_12 is",
        "mean_roof_height: eave_height_ft=61, run_ft=15, rise_in_12=6 | eave_height_ft is"
      })
  void whatNoRuleIsFor_isRefused(String call, String reason) {
    assertThat(Asked.line(call).refusal().orElseThrow()).contains(reason);
  }
}
