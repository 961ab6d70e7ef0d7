package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** The working of each value reads like the standard: its letters, its equations, its clauses. */
class WoodEquationsTest {

  private static final String STICK =
      "design_values: species=hem-fir, grade=no-1, size=2x8, value_set=nds2018, moisture=wet,"
          + " load_duration=snow, spacing_in=16, unbraced_in=48, end_distance_in=4, incised=yes,"
          + " temperature_f=110";
  private static final String BEAM =
      "beam_stability: unbraced_in=48, depth_in=7.25, thickness_in=1.5, min_modulus_psi=470000,"
          + " bending_psi=1200";

  /**
   * NDS 2018, chapters 3 and 4, and Table 4.3.1: letters and equations, read against the standard
   * from memory; words between them are names of our own.
   */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        STICK + " | sized bending = F_b × C_F",
        STICK + " | service bending = sized bending × C_M × C_t × C_i",
        STICK + " | service shear = F_v × C_M × C_t × C_i",
        STICK + " | service bearing = F_c⊥ × C_M × C_t × C_i",
        STICK + " | E' = E × C_M × C_t × C_i",
        STICK + " | E_min' = E_min × C_M × C_t × C_i",
        STICK + " | F_b* = service bending × C_D × C_r",
        STICK + " | F_b' = F_b* × C_L × C_fu",
        STICK + " | F_v' = service shear × C_D",
        STICK + " | F_c⊥' = service bearing × C_b",
        STICK + " | C_b = (l_b + 3/8 in) ÷ l_b",
        STICK + " | C_M = wet bending table",
        STICK + " | C_M = modulus in wet service factors",
        STICK + " | C_t = stress in temperature factors",
        STICK + " | C_i = bearing in incising factors",
        STICK + " | load duration factors [load duration]",
        STICK + " | since s ≤ 24 in",
        STICK + " | l_u = unbraced on edge",
        BEAM + " | l_u = l_u",
        BEAM + " | short effective length = 2.06 × l_u",
        BEAM + " | l_e = short effective length",
        BEAM + " | R_B = √(l_e × d ÷ b^2)",
        BEAM + " | F_bE = 1.20 × E_min' ÷ R_B^2",
        BEAM + " | F = F_bE ÷ F_b*",
        BEAM + " | unheld factor = ((1 + F)/1.9) − √(((1 + F)/1.9)^2 − F ÷ 0.95)",
        BEAM + " | C_L = unheld factor",
        BEAM + " | C_L = C_L",
        BEAM + " | NDS 2018, equation 3.3-5 ",
        BEAM + " | NDS 2018, 3.3.3.8 ",
        "section_properties: size=2x8, stock=dressed | A = b × d",
        "section_properties: size=2x8, stock=dressed | S = b × d^2 ÷ 6",
        "section_properties: size=2x8, stock=dressed | I = b × d^3 ÷ 12",
        "section_properties: size=2x8, stock=dressed | dressed sizes [size]",
        "section_properties: size=2x8, stock=green | listed thickness = ",
        "section_properties: size=2x8, stock=green | graded width = ",
        "section_properties: size=2x8, stock=green | named width = ",
        "section_properties: size=2x8, stock=green | known width = ",
        "section_properties: size=2x8, stock=green | taken width = ",
        STICK
            + " | C_r = 1.15                                                      NDS 2018, 4.3.9 ",
        "wood_gravity: species=hem-fir | wood gravities [species]"
      })
  void theWorking_readsLikeTheStandard(String call, String line) {
    assertThat(Asked.line(call).working() + " ").contains(line);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "beam_stability: unbraced_in=601, depth_in=7.25, thickness_in=1.5, min_modulus_psi=470000,"
            + " bending_psi=1200 | unbraced_in is",
        "beam_stability: unbraced_in=600, depth_in=11.25, thickness_in=1.5, min_modulus_psi=470000,"
            + " bending_psi=1200 | may not be used (NDS 2018, 3.3.3.7 (secondary source));"
            + " hold its upper edge at shorter distances",
        "section_properties: size=2x8, stock=ripped |"
            + " (PS 20-25, 7.3.7 (secondary source)); no value may be used for it"
      })
  void whatNoRuleIsFor_isRefused(String call, String reason) {
    assertThat(Asked.line(call).refusal().orElseThrow()).contains(reason);
  }

  /** A word that is named in passing, as at the prompt, takes its parameter's name. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        STICK + " | load duration factors [load duration]",
        STICK + " | lumber design values [value set, species, grade, size]",
        "section_properties: size=2x8, stock=dressed | dressed sizes [size]",
        "wood_gravity: species=hem-fir | wood gravities [species]"
      })
  void aWordInPassing_takesItsParametersName(String call, String line) {
    assertThat(Asked.line(call).workingInPassing()).contains(line);
  }
}
