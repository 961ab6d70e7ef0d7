package sheathwright.loads;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** The working of each load reads like the standard: its letters and its equations. */
class LoadsEquationsTest {

  private static final String CLADDING =
      "cladding_pressure: edition=7-16, roof=gable, zone=1, rise_in_12=6, area_sf=20, wind_mph=125,"
          + " exposure=c, height_ft=22, enclosure=enclosed";

  private static final String ROOF_SNOW =
      "roof_snow: edition=7-16, importance=1.1, exposure_factor=1, ground_snow_psf=40,"
          + " thermal_factor=1, slippery=no, rise_in_12=9";
  private static final String RAIN =
      "rain_on_snow: edition=7-16, risk_category=ii, ground_snow_psf=15, rise_in_12=0.25,"
          + " eave_to_ridge_ft=80";
  private static final String DRIFT =
      "unbalanced_snow: edition=7-22, ground_snow_psf=40, sloped_psf=28, rise_in_12=4,"
          + " eave_to_ridge_ft=30, simple_rafters=no, winter_wind=0.4";
  private static final String LEEWARD =
      "unbalanced_snow: edition=7-16, ground_snow_psf=40, sloped_psf=28, rise_in_12=4,"
          + " eave_to_ridge_ft=14, simple_rafters=yes, importance=1.1";

  private static final String ROOF_LIVE =
      "roof_live_load: tributary_sf=300, rise_in_12=6, edition=7-16";
  private static final String FRAMING =
      "framing_load: thickness_in=1.5, depth_in=5.5, spacing_in=16";
  private static final String TOGETHER =
      "load_combinations: dead_psf=10, roof_live_psf=20, snow_psf=30, uplift_psf=40, edition=7-22";

  /** ASCE 7-16, chapters 2, 7, 26 and 30: equations, read against them from memory. */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "velocity_pressure: edition=7-16, exposure=b, wind_mph=115, height_ft=18 |"
            + " 0.00256 psf × (V ÷ 1 mph)^2 × K_z × K_zt × K_d",
        CLADDING + " | since enclosure is enclosed",
        CLADDING + " | share 10 to 20 = ",
        CLADDING + " | outward coefficient gain 10 to 20 = ",
        CLADDING + " | inward coefficient with gain 50 to 100 = ",
        CLADDING + " | height exposure factor gain 15 to 20 = ",
        ROOF_SNOW + " | p_f = 0.7 × C_e × C_t × I_s × p_g",
        ROOF_SNOW + " | sloped = C_s × p_f",
        ROOF_SNOW + " | (70 − θ) ÷ (70 − s_0)",
        RAIN + " | slope that drains in degrees = W ÷ 50 ft",
        RAIN + " | θ < slope that drains in degrees",
        DRIFT + " | γ = the lesser of 0.13 × p_g",
        DRIFT + " | × W_2^1.7 ÷ (γ ÷ 1 pcf)",
        DRIFT + " | × l_u^0.7",
        DRIFT + " | drift = h_d × γ ÷ √S",
        DRIFT + " | 0.3 × p_s",
        DRIFT + " | p_g = ground snow",
        "snow_importance: risk_category=iii, edition=7-16 | I_s = importance in",
        LEEWARD + " | I_s × p_g",
        ROOF_LIVE + " | L_o × R_1 × R_2",
        ROOF_LIVE + " | 1.2 − A_t ÷ 1000 sq ft",
        ROOF_LIVE + " | 1.2 − F ÷ 20 in 12",
        ROOF_LIVE + " | basic in roof live loads [edition]",
        FRAMING + " | ÷ s × ",
        TOGETHER + " | allowable uplift = 0.6 × W",
        TOGETHER + " | dead against uplift = 0.6 × D",
        TOGETHER + " | dead and roof live = D + L_r",
        TOGETHER + " | dead and snow = D + allowable snow",
        TOGETHER + " | allowable snow = snow share × S",
        TOGETHER + " | dead and snow by duration = dead and snow ÷ C_D",
        TOGETHER + " | since edition is asce7-22",
        "layer_load: material=asphalt-shingles, layers=2 | weights of materials [",
      })
  void theWorking_readsLikeTheStandard(String call, String line) {
    assertThat(Asked.line(call).working() + " ").contains(line);
  }

  /** A word that is named in passing, as at the prompt, takes its parameter's name. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        CLADDING + " | since enclosure is enclosed",
        ROOF_LIVE + " | basic in roof live loads [edition]",
        TOGETHER + " | since edition is asce7-22",
        "layer_load: material=asphalt-shingles, layers=2 | since it is not so that material is"
      })
  void aWordInPassing_takesItsParametersName(String call, String line) {
    assertThat(Asked.line(call).workingInPassing()).contains(line);
  }
}
