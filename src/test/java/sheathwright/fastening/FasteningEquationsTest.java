package sheathwright.fastening;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/**
 * The working of each strength reads like the standard: its letters, its equations, its clauses.
 */
class FasteningEquationsTest {

  private static final String SHEATHING_NAIL =
      "nail_resistance: diameter_in=0.131, length_in=2.5, head_diameter_in=0.281, shank=ring,"
          + " specific_gravity=0.42, thickness_in=0.5, panel_gravity=0.5, moisture=stays-dry";
  private static final String LATERAL =
      "nail_lateral: diameter_in=0.131, length_in=2.5, bending_yield_psi=100000,"
          + " side_thickness_in=1, side_gravity=0.5, main_gravity=0.42";
  private static final String LAG =
      "screw_resistance: screw_kind=lag-screw, diameter_in=0.25, length_in=3, thread_in=2,"
          + " specific_gravity=0.42, thickness_in=0.5, moisture=stays-dry";
  private static final String PANEL_SCREW =
      "panel_screw_withdrawal: specific_gravity=0.5, thickness_in=0.5, diameter_in=0.19,"
          + " moisture=stays-dry";

  private static final String ROW =
      "nailing_schedule: code=irc-2021, thickness_in=0.5, nail=8d-common, wind_mph=110, exposure=b,"
          + " specific_gravity=0.42";
  private static final String OTHER_ROW =
      "alternate_schedule: code=irc-2018, thickness_in=0.5, alternate=nail-0.097, wind_mph=105";

  /** NDS 2018, chapter 12 and Tables 12.3.1A, 12.3.1B and 12.3.3, read against them from memory. */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "lag_withdrawal: specific_gravity=0.5, diameter_in=0.25 | 1800 lb/in × G^1.5 × (D ÷ 1 in)^0.75",
        "screw_withdrawal: specific_gravity=0.5, diameter_in=0.164 | 2850 psi × G^2 × D",
        "nail_withdrawal: specific_gravity=0.5, diameter_in=0.131, shank=ring | 1800 psi × G^2 × D",
        "nail_withdrawal: specific_gravity=0.5, diameter_in=0.131, shank=ring | since shank is ring",
        "nail_pull_through: specific_gravity=0.5, thickness_in=0.5, head_diameter_in=0.281 |"
            + " 690 psi × π × D_H × G^2 × t",
        LATERAL + " | F_es = 16600 psi × side gravity^1.84 ÷ 50 psi to the nearest whole × 50 psi",
        LATERAL + " | F_em = 16600 psi × main gravity^1.84 ÷ 50 psi to the nearest whole × 50 psi",
        LATERAL + " | p = L − l_s",
        LATERAL + " | R_d = 2.2",
        LATERAL + " | R_e = F_em ÷ F_es",
        LATERAL + " | R_t = l_m ÷ l_s",
        LATERAL
            + " | k3 = √(2 × (1 + R_e) ÷ R_e + 2 × F_yb × (2 + R_e) × D^2 ÷ (3 × F_em × l_s^2)) − 1",
        LATERAL + " | (3 × F_em × l_m^2)",
        LATERAL + " | NDS 2018, 12.3.5 ",
        LATERAL + " | NDS 2018, 12.3.1 ",
        LATERAL + " | mode from iiis = ",
        LATERAL + " | mode from is = ",
        "toe_nail: length_in=3 | l_s = the lesser of side thickness and",
        "toe_nail: length_in=3 | l_m = L × cos 30°",
        "toe_nail: length_in=3 | p = L − third of the nail ÷ cos 30°",
        SHEATHING_NAIL + " | W × p × C_D × C_M × C_t",
        SHEATHING_NAIL + " | W_H × C_D × C_t",
        SHEATHING_NAIL + " | load duration factors [load duration]",
        SHEATHING_NAIL + " | NDS 2018, 12.2.3 ",
        SHEATHING_NAIL + " | NDS 2018, 11.3 ",
        SHEATHING_NAIL + " | NDS 2018, 12.2 ",
        LAG + " | W × thread held × C_D × C_M × C_t",
        LAG + " | load duration factors [load duration]",
        LAG + " | NDS 2018, 12.2 ",
        LAG + " | NDS 2018, 11.3 ",
        PANEL_SCREW + " | W × thread held × C_D × C_M × C_t",
        PANEL_SCREW + " | load duration factors [load duration]",
        "panel_holding_gravity: shank=ring, moisture=stays-dry | 1380 psi × G_listed^2.5 ÷ 1800 psi",
        "panel_holding_gravity: shank=ring, moisture=stays-dry | since shank is ring",
        "panel_holding_gravity: shank=ring, moisture=stays-dry | since moisture is stays-dry",
        "panel_gravity: panel=any-osb | panel gravities [panel]",
        "nail_dimensions: nail=8d-common | nail dimensions [nail]",
        "screw_dimensions: screw=no-10 | screw dimensions [screw]",
        "nailing_schedule: code=irc-2021, thickness_in=0.5, nail=8d-common, wind_mph=110, exposure=b,"
            + " specific_gravity=0.42 | roof nailing rows [code",
        "nailing_schedule: code=irc-2021, thickness_in=0.5, nail=8d-common, wind_mph=110, exposure=b,"
            + " specific_gravity=0.42 | , nail]",
        "alternate_schedule: code=irc-2018, thickness_in=0.5, alternate=nail-0.097, wind_mph=105 |"
            + " IRC alternate fasteners [code, panel group, alternate]",
        "high_wind_schedule: wind_mph=120, exposure=b, specific_gravity=0.42 |"
            + " high-wind nailing [exposure, framing]",
        ROW + " | row thickness least = thickness least in roof nailing rows",
        ROW + " | printed edge = edge in roof nailing rows",
        ROW + " | by wind near = calm near in roof nailing rows",
        OTHER_ROW + " | printed length = length in IRC alternate fasteners",
        "nails_to_add: sound_nails=3, credit=yes, support_spacing_in=16, edge_spacing_in=6,"
            + " field_spacing_in=12 | since credit is yes",
        "nail_spacing_for_uplift: resistance_lb=60, uplift_psf=60, support_spacing_in=24 |"
            + " resistance ÷ (p × support spacing)"
      })
  void theWorking_readsLikeTheStandard(String call, String line) {
    assertThat(Asked.line(call).working() + " ").contains(line);
  }

  /** NDS 2018: where each of the numbers stands, from memory. */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        SHEATHING_NAIL + " | penetration_in | NDS 2018, 12.2.3 (from memory)",
        SHEATHING_NAIL + " | withdrawal_lb | NDS 2018, 11.3 (from memory)",
        SHEATHING_NAIL + " | pull_through_lb | NDS 2018, 11.3 (from memory)",
        SHEATHING_NAIL + " | resistance_lb | NDS 2018, 12.2 (from memory)",
        LAG + " | thread_held_in | NDS 2018, 12.2 (secondary source)",
        LAG + " | resistance_lb | NDS 2018, 11.3 (from memory)"
      })
  void eachAnswer_namesItsClause(String call, String result, String clause) {
    assertThat(Asked.line(call).source(result)).isEqualTo(clause);
  }

  /** A word that is named in passing, as at the prompt, takes its parameter's name. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "nail_withdrawal: specific_gravity=0.5, diameter_in=0.131, shank=ring | since shank is ring",
        SHEATHING_NAIL + ", load_duration=snow | load duration factors [load duration]",
        LAG + ", load_duration=snow | load duration factors [load duration]",
        PANEL_SCREW + ", load_duration=snow | load duration factors [load duration]",
        "panel_holding_gravity: shank=ring, moisture=stays-dry | since shank is ring",
        "panel_holding_gravity: shank=ring, moisture=stays-dry | since moisture is stays-dry",
        "panel_gravity: panel=any-osb | panel gravities [panel]",
        "nail_dimensions: nail=8d-common | nail dimensions [nail]",
        "screw_dimensions: screw=no-10 | screw dimensions [screw]",
        "nailing_schedule: code=irc-2021, thickness_in=0.5, nail=8d-common, wind_mph=110, exposure=b,"
            + " specific_gravity=0.42 | roof nailing rows [code, band, nail]",
        "alternate_schedule: code=irc-2018, thickness_in=0.5, alternate=nail-0.097, wind_mph=105 |"
            + " IRC alternate fasteners [code, panel group, alternate]",
        "high_wind_schedule: wind_mph=120, exposure=b, specific_gravity=0.42 |"
            + " high-wind nailing [exposure, framing]",
        "nails_to_add: sound_nails=3, credit=yes, support_spacing_in=16, edge_spacing_in=6,"
            + " field_spacing_in=12 | since credit is yes"
      })
  void aWordInPassing_takesItsParametersName(String call, String line) {
    assertThat(Asked.line(call).workingInPassing()).contains(line);
  }
}
