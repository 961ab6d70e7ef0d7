package sheathwright.framing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** The working of each check reads like statics and the standard: letters and equations. */
class FramingEquationsTest {

  private static final String RAFTER_CHECK =
      "rafter_check: species=douglas-fir-larch, grade=select-structural, size=2x4, "
          + "value_set=nds2018, spacing_in=12, live_psf=40, dead_psf=8, load=roof-live, "
          + "deflection_limit=180, span_ft=12.25, bearing_in=3.5";
  private static final String NAILS_ALONG_SISTER =
      "nails_along_sister: sister_share=0.36, span_ft=11.25, spacing_in=16, "
          + "live_psf=30, dead_psf=10, lateral_lb=97, sister_bears=yes";
  private static final String SISTER_SPLICE =
      "sister_splice: spacing_in=24, live_psf=30, dead_psf=10, lateral_lb=135.7, "
          + "sister_bending_psi=1428.3, span_ft=11.5, break_ft=4.25, near_in=4, arm_in=18, "
          + "sister_size=2x8, sisters=1";
  private static final String PART_SISTER =
      "part_sister: rafter_bending_psi=1006, sister_bending_psi=1350, spacing_in=16, "
          + "existing_psf=4, lateral_lb=135.7, support_ratio=0.4, rafter_depth_in=5.5, "
          + "sister_size=2x6, span_ft=13, sister_length_ft=10.5, arm_in=18, live_psf=20, "
          + "dead_psf=10";
  private static final String PART_SISTER_SAG =
      "part_sister_sag: rafter_depth_in=5.5, sister_size=2x6, span_ft=12, "
          + "spacing_in=16, live_psf=20, sister_length_ft=6.5";
  private static final String ADJUSTED_LATERAL =
      "adjusted_lateral: lateral_lb=97, penetration_in=1.2, diameter_in=0.131, "
          + "moisture=stays-dry, penetration_counted=yes";
  private static final String HEEL_NAILS =
      "heel_nails: span_ft=11.5, rise_in_12=3, spacing_in=16, load_psf=30, "
          + "adjusted_lb=147.5, tie_height_in=0, nails_found=3";
  private static final String SISTERED_RAFTER =
      "sistered_rafter: rafter_bending_psi=1006, sister_bending_psi=1350, "
          + "spacing_in=16, existing_psf=4, rafter_depth_in=3.625, sister_size=2x6, "
          + "span_ft=11, live_psf=20, dead_psf=10, jacked=yes";
  private static final String SISTER_REACTIONS =
      "sister_reactions: rafter_shear_psi=155.25, rafter_bearing_psi=425, "
          + "sister_shear_psi=207, sister_bearing_psi=625, existing_lb=40, added_lb=180, "
          + "rafter_share=0.2764, sister_bears=yes, rafter_depth_in=5.5, sister_size=2x6, "
          + "rafter_notch_in=0";
  private static final String RAFTER_THRUST =
      "rafter_thrust: span_ft=10.5, rise_in_12=3, spacing_in=16, load_psf=30, " + "tie_height_in=0";
  private static final String RAFTER_SCREENING =
      "rafter_screening: species=douglas-fir-larch, grade=select-structural, "
          + "size=2x4, value_set=nds2018, spacing_in=16, span_ft=12, rise_in_12=3, "
          + "dead_psf=8, roof_live_psf=20, snow_psf=35, bearing_in=3.5, notch_in=1.25, "
          + "notch_known=unknown, seasoned=yes, deflection_limit=240, moisture=stays-wet, "
          + "temperature_f=120, incised=no, brace_spacing_in=48, end_distance_in=0";
  private static final String PART_SISTER_REACH =
      "part_sister_reach: rafter_depth_in=5.5, rafter_bending_psi=650, span_ft=13.5, "
          + "spacing_in=16, live_psf=30, dead_psf=12, support_ratio=0.5";

  private static final String SISTER_SIZES =
      "sister_sizes: rafter_bending_psi=1006, spacing_in=16, dead_psf=10, existing_psf=4,"
          + " price_2x4_usd=6.5, price_2x6_usd=9.8, price_2x8_usd=13.25, price_2x10_usd=19,"
          + " price_2x12_usd=26, rafter_depth_in=3.625, sister_species=hem-fir, sister_grade=no-1,"
          + " load=roof-live, span_ft=10, live_psf=30";
  private static final String UPLIFT_TIE =
      "uplift_tie: spacing_in=12, wind_mph=120, exposure=b, roof_span_ft=12, rise_in_12=4,"
          + " tie_lb=175";

  /**
   * Statics of a simple span, NDS 2018 Table 4.3.1 and 3.4.3, read against them from memory, and
   * each function's own text; words between the letters are names of our own.
   */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        RAFTER_CHECK + " | w = (q_live + q_dead) × s",
        RAFTER_CHECK + " | M = w × L^2 ÷ 8",
        RAFTER_CHECK + " | bending stress = M ÷ S",
        RAFTER_CHECK + " | F_b' = F_b × C_D × C_F × C_r",
        RAFTER_CHECK + " | bending ratio = bending stress ÷ F_b'",
        RAFTER_CHECK + " | R = w × L ÷ 2",
        RAFTER_CHECK + " | shear stress = 3 × R ÷ (2 × A)",
        RAFTER_CHECK + " | F_v' = F_v × C_D",
        RAFTER_CHECK + " | shear ratio = shear stress ÷ F_v'",
        RAFTER_CHECK + " | w_live = q_live × s",
        RAFTER_CHECK + " | live sag = 5 × w_live × L × L^3 ÷ (384 × E × I)",
        RAFTER_CHECK + " | sag allowed = L ÷ n",
        RAFTER_CHECK + " | bearing stress = R ÷ (b × l_b)",
        RAFTER_CHECK + " | bearing ratio = bearing stress ÷ F_c⊥",
        RAFTER_CHECK + " | bending span = √(8 × F_b' × S ÷ w)",
        RAFTER_CHECK + " | shear span = 4 × A × F_v' ÷ (3 × w)",
        RAFTER_CHECK + " | deflection span = (384 × E × I ÷ (5 × n × w_live))^(1/3)",
        RAFTER_CHECK + " | bearing span = 2 × F_c⊥ × b × l_b ÷ w",
        SISTER_SIZES + " | rafter moment with 2x12 = M_locked + a_rafter × M_added",
        SISTER_SIZES + " | EI_sister_2x12 ÷ EI",
        SISTER_SIZES + " | ÷ M_cap_sister_2x12",
        SISTER_SIZES + " | passes 2x12 = yes",
        SISTER_SIZES + " | place 2x6 = 1 + cheaper 2x4 than 2x6 + cheaper 2x8 than 2x6",
        SISTER_SIZES + " | cheapest from 2x6 = 2x6",
        SISTER_SIZES + " | cheapest from 2x6 = price of a 2x6",
        SISTER_SIZES + " | ratio 2x4 = the greater of the greater of rafter ratio with 2x4",
        SISTER_SIZES + " | rank 2x4 = why not 2x4",
        SISTER_SIZES + " | rank 2x6 = place 2x6",
        UPLIFT_TIE + " | uplift connections [spacing row, span row, pitch row, wind column]",
        UPLIFT_TIE + " | wind column from 1 = wind column from 2",
        UPLIFT_TIE + " | since spacing ≤ 12 in",
        NAILS_ALONG_SISTER + " | = a_sister × w",
        NAILS_ALONG_SISTER + " | each =",
        NAILS_ALONG_SISTER + " | nail ratio = each ÷ Z'",
        NAILS_ALONG_SISTER + " | strength spacing = Z' ÷",
        SISTER_SPLICE + " | half length = c + s + end distance",
        SISTER_SPLICE + " | break moment = w × x × (L − x) ÷ 2",
        SISTER_SPLICE + " | signed shear = w × (L ÷ 2 − x)",
        SISTER_SPLICE + " | sister moment = (M_b + c × V_b) ÷ sisters",
        SISTER_SPLICE + " | far = sister moment ÷ s",
        SISTER_SPLICE + " | near = far + V_b ÷ sisters",
        SISTER_SPLICE + " | near nails = the greater of ⌈near ÷ Z'⌉ and 3 nails",
        SISTER_SPLICE + " | S_sister = b_sister × d_sister^2 ÷ 6",
        SISTER_SPLICE + " | M_cap_sister = F_b'_sister × S_sister",
        SISTER_SPLICE + " | sister ratio = sister moment ÷ M_cap_sister",
        PART_SISTER + " | M_whole = w × L^2 ÷ 8",
        PART_SISTER + " | M_cap_rafter = F_b'_rafter × S_rafter",
        PART_SISTER + " | a = (L − l) ÷ 2",
        PART_SISTER + " | end moment = w × a × (L − a) ÷ 2",
        PART_SISTER + " | w_added = w − w_locked",
        PART_SISTER + " | x_1 = a + end distance",
        PART_SISTER + " | x_2 = x_1 + s",
        PART_SISTER + " | EI = EI_rafter + EI_sister",
        PART_SISTER + " | b = L ÷ 2 − x_2",
        PART_SISTER + " | k_pieces = EI_rafter × EI_sister ÷ (EI × s^2 × (b + s ÷ 3))",
        PART_SISTER + " | R_rigid = u × k_pieces",
        PART_SISTER + " | couple = a_sister × end moment ÷ s",
        PART_SISTER + " | k_group = group nails ÷ 1 nail × k ÷ 2",
        PART_SISTER + " | R = R_rigid × k_group ÷ (k_group + k_pieces)",
        PART_SISTER + " | peak moment = w × x_peak × (L − x_peak) ÷ 2",
        PART_SISTER + " | rafter middle moment = M_whole − R × s",
        PART_SISTER + " | brought moment = R × s",
        PART_SISTER + " | sister part = brought moment ÷ M_added",
        PART_SISTER
            + " | sag taken off = live group × (s^2 × x_1 ÷ 2 + s^3 ÷ 3 + s × (L^2 ÷ 4 − x_2^2) ÷ 2) ÷ EI_rafter",
        PART_SISTER_SAG + " | most sag = 5 × w_live × L × L^3 ÷ (384 × EI_rafter)",
        PART_SISTER_SAG + " | sag full length = 5 × w_live × L × L^3 ÷ (384 × EI)",
        PART_SISTER_SAG + " | (1 ÷ EI_rafter − 1 ÷ EI) × w_live × (L × a^3 ÷ 6 − a × a^3 ÷ 8)",
        ADJUSTED_LATERAL + " | adjusted = Z × C_D × C_M × C_t × penetration factor",
        ADJUSTED_LATERAL + " | part of ten diameters = p ÷ (10 × D)",
        HEEL_NAILS + " | w = q × s",
        HEEL_NAILS + " | H_R = L × tan θ",
        HEEL_NAILS + " | (1 − H_C/H_R) = 1 − H_C ÷ H_R",
        HEEL_NAILS + " | H = w × L ÷ (2 × tan θ) ÷ (1 − H_C/H_R)",
        HEEL_NAILS + " | computed nails = the greater of ⌈H ÷ Z'⌉ and 3",
        SISTERED_RAFTER + " | a_rafter = EI_rafter ÷ EI",
        SISTERED_RAFTER + " | a_sister = EI_sister ÷ EI",
        SISTERED_RAFTER + " | alone ratio = M_whole ÷ M_cap_rafter",
        SISTERED_RAFTER + " | M_locked = w_locked × L^2 ÷ 8",
        SISTERED_RAFTER + " | rafter moment = M_locked + a_rafter × M_added",
        SISTERED_RAFTER + " | sister moment = a_sister × M_added",
        SISTERED_RAFTER + " | sag = 5 × w_live × L × L^3 ÷ (384 × EI)",
        SISTERED_RAFTER
            + " | capacity = the lesser of M_cap_rafter ÷ a_rafter and M_cap_sister ÷ a_sister",
        SISTERED_RAFTER + " | S_rafter = b_rafter × d_rafter^2 ÷ 6",
        SISTERED_RAFTER + " | EI_rafter = E_rafter × I_rafter",
        SISTER_REACTIONS + " | R = R_existing + R_added",
        SISTER_REACTIONS + " | sister part = 1 − a_rafter",
        SISTER_REACTIONS + " | rafter reaction = R − sister reaction",
        SISTER_REACTIONS + " | d_n_rafter = d_rafter − notch_rafter",
        SISTER_REACTIONS
            + " | rafter shear capacity = 2 × F_v'_rafter × b_rafter × d_n_rafter ÷ 3 × rafter notch factor^2",
        SISTER_REACTIONS + " | rafter bearing capacity = F_c⊥'_rafter × b_rafter × l_b",
        SISTER_REACTIONS + " | d_n_sister = d_sister − notch_sister",
        SISTER_REACTIONS
            + " | sister shear capacity = 2 × F_v'_sister × b_sister × d_n_sister ÷ 3 × sister notch factor^2",
        SISTER_REACTIONS + " | sister bearing capacity = F_c⊥'_sister × b_sister × l_b",
        RAFTER_THRUST + " | thrust = w × L ÷ (2 × tan θ) ÷ (1 − H_C/H_R)",
        RAFTER_SCREENING + " | w_D = D × s",
        RAFTER_SCREENING + " | (L/f) = L ÷ f",
        RAFTER_SCREENING + " | dead bending stress = w_D × (L/f)^2 ÷ 8 ÷ S",
        RAFTER_SCREENING + " | F_b' = service bending × C_r",
        RAFTER_SCREENING + " | dead bending allowed = F_b' × C_D",
        RAFTER_SCREENING + " | w_D+Lr = (D + L_r) × s",
        RAFTER_SCREENING + " | w_D+S = (D + S) × s",
        RAFTER_SCREENING + " | slope factor = √(1 + tan θ^2)",
        RAFTER_SCREENING + " | sin θ = tan θ ÷ slope factor",
        RAFTER_SCREENING + " | notch = the greater of notch and (l_b sin θ)",
        RAFTER_SCREENING + " | d_n = d − notch",
        RAFTER_SCREENING + " | (d_n/d) = d_n ÷ d",
        RAFTER_SCREENING
            + " | dead shear stress = 3 × w_D × L ÷ 2 ÷ (2 × area over seat) ÷ (d_n/d)^2",
        RAFTER_SCREENING + " | deflection = 5 × w_live × (L/f) × (L/f)^3 ÷ (384 × E' × I)",
        RAFTER_SCREENING + " | deflection allowed = (L/f) ÷ n",
        RAFTER_SCREENING + " | creeping load = w_live + K_cr × w_D",
        RAFTER_SCREENING + " | total deflection allowed = (L/f) ÷ n_total",
        RAFTER_SCREENING + " | bearing stress = greatest load × L ÷ 2 ÷ (b × l_b)",
        RAFTER_SCREENING + " | F_c⊥' = service bearing × C_b",
        RAFTER_SCREENING + " | notch allowed = d ÷ 4",
        RAFTER_SCREENING + " | framing = 35 pcf × A × slope factor",
        RAFTER_SCREENING
            + " | deck off person = deck off stacked load × (L/f)^2 ÷ 8 + person × (L/f) ÷ 4",
        RAFTER_SCREENING + " | F_b* = service bending × C_D",
        RAFTER_SCREENING + " | deck off allowed = F_b* × C_L",
        RAFTER_SCREENING + " | deck off slenderness ratio = R_B ÷ 50",
        RAFTER_SCREENING + " | deck off dead = w_D ÷ s",
        PART_SISTER_REACH + " | M_cap_rafter = F_b'_rafter × S_rafter"
      })
  void theWorking_readsLikeStatics(String call, String line) {
    assertThat(Asked.line(call).working() + " ").contains(line);
  }

  /** A word that is named in passing, as at the prompt, takes its parameter's name. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "framing_stop: worst_ratio=0.25, seen=nothing | who decides [seen]",
        "ridge_stop: rise_in_12=1, ridge=unknown | ridge is beam",
        NAILS_ALONG_SISTER + " | since sister bears is yes",
        SISTER_SPLICE + " | dressed sizes [sister size]",
        ADJUSTED_LATERAL + ", load_duration=snow | load duration factors [load duration]",
        RAFTER_CHECK + " | load duration factors [load]"
      })
  void aWordInPassing_takesItsParametersName(String call, String line) {
    assertThat(Asked.line(call).workingInPassing()).contains(line);
  }
}
