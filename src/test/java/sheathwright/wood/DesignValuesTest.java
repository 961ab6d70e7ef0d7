package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Word;

/** Adjusted design values by hand, each factor by itself, and every word of the drop-downs. */
class DesignValuesTest {

  private static final Percentage LAST_BITS = Percentage.withPercentage(1e-10);

  private static final Asked LARCH =
      Asked.of("design_values")
          .with("moisture", "dry")
          .with("species", "douglas-fir-larch")
          .with("grade", "no-2")
          .with("size", "2x8")
          .with("value_set", "nds2018")
          .with("load_duration", "ten-years")
          .with("spacing_in", "32");

  /** F_b, F_v, F_c⊥, E and E_min of douglas fir-larch no. 2, Table 4A, secondary source. */
  private static final double[] PRINTED = {900 * 1.2, 180, 625, 1.6e6, 580e3};

  private static void assertTimes(Asked asked, double... factors) {
    String[] columns = {
      "bending_psi", "shear_psi", "bearing_psi", "modulus_psi", "min_modulus_psi"
    };
    for (int i = 0; i < columns.length; i++) {
      assertThat(asked.number(columns[i]))
          .as(columns[i])
          .isCloseTo(PRINTED[i] * factors[i], LAST_BITS);
    }
  }

  @Test
  void plainWood_hasThePrintedValues() {
    assertTimes(LARCH, 1, 1, 1, 1, 1);
  }

  // NDS 2018 Table 2.3.2, secondary source; duration is for bending and shear alone.
  @ParameterizedTest
  @CsvSource({
    "permanent, 0.9",
    "ten-years, 1.0",
    "snow, 1.15",
    "roof-live, 1.25",
    "ten-minutes, 1.6"
  })
  void loadDuration_isForBendingAndShear(String duration, double cd) {
    assertTimes(LARCH.with("load_duration", duration), cd, cd, 1, 1, 1);
  }

  @Test
  void wetService_isThePrintedFactor() {
    // Table 4A, secondary source: 900 × 1.2 = 1080 is not over 1150, so bending keeps its value.
    assertTimes(LARCH.with("moisture", "wet"), 1, 0.97, 0.67, 0.9, 0.9);
    // 1000 × 1.2 = 1200 is.
    Asked stronger = LARCH.with("grade", "no-1");
    assertThat(stronger.with("moisture", "wet").number("bending_psi"))
        .isCloseTo(1200 * 0.85, LAST_BITS);
  }

  // NDS 2018 Table 2.3.3, from memory.
  @ParameterizedTest
  @CsvSource({
    "dry, 100, 1,   1",
    "dry, 101, 0.8, 0.9",
    "dry, 125, 0.8, 0.9",
    "dry, 126, 0.7, 0.9",
    "wet, 110, 0.7, 0.9",
    "wet, 150, 0.5, 0.9"
  })
  void temperature_isThePrintedFactor(String moisture, String degrees, double f, double e) {
    Asked damp = LARCH.with("moisture", moisture);
    Asked warm = damp.with("temperature_f", degrees);
    for (String stress : new String[] {"bending_psi", "shear_psi", "bearing_psi"}) {
      assertThat(warm.number(stress) / damp.number(stress)).isCloseTo(f, LAST_BITS);
    }
    for (String modulus : new String[] {"modulus_psi", "min_modulus_psi"}) {
      assertThat(warm.number(modulus) / damp.number(modulus)).isCloseTo(e, LAST_BITS);
    }
  }

  @Test
  void otherFactors_areThePrintedOnes() {
    // NDS 2018: Table 4.3.8 from memory; 4.3.9, Table 4A and 3.10.4 secondary source.
    assertTimes(LARCH.with("incised", "yes"), 0.8, 0.8, 1, 0.95, 0.95);
    assertTimes(LARCH.with("spacing_in", "24"), 1.15, 1, 1, 1, 1);
    assertTimes(LARCH.with("flatwise", "yes"), 1.15, 1, 1, 1, 1);
    Asked inside = LARCH.with("end_distance_in", "3");
    assertTimes(inside, 1, 1, 1.25, 1, 1);
    assertThat(inside.with("bearing_in", "3.5").number("bearing_area_factor"))
        .isCloseTo(1.107, within(0.0005));
    assertTimes(inside.with("bearing_in", "6"), 1, 1, 1, 1, 1);
    assertTimes(LARCH.with("end_distance_in", "2.99"), 1, 1, 1, 1, 1);
  }

  @Test
  void flatWood_cannotRollOver() {
    Asked flat = LARCH.with("flatwise", "yes").with("unbraced_in", "600");
    assertThat(flat.number("stability_factor")).isEqualTo(1);
  }

  @Test
  void tooSlenderWood_isRefused() {
    // R_B = √(l_e d ÷ b²): (1.63 × 600 + 3 × 11.25) × 11.25 ÷ 2.25 is over 50².
    Asked slender = LARCH.with("size", "2x12").with("unbraced_in", "600");
    assertThat(slender.refusal().orElseThrow()).startsWith("the slenderness ratio is over 50");
  }

  @ParameterizedTest
  @EnumSource(ValueSet.class)
  void everyWord_hasAValueOrSaysWhyNot(ValueSet valueSet) {
    for (Species species : Species.values()) {
      for (Grade grade : Grade.values()) {
        for (LumberSize size : LumberSize.values()) {
          Asked asked =
              LARCH
                  .with("value_set", valueSet.word())
                  .with("species", species.word())
                  .with("grade", grade.word())
                  .with("size", size.word());
          String wood = asked.refusal().orElse("held");
          assertThat(wood).matches("held|[^\\n]* hold nothing for [^\\n]*; they hold[^\\n]*");
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(ValueSet.class)
  void contractWords_areAllHeld(ValueSet valueSet) {
    Word[] grades = {Grade.SELECT_STRUCTURAL, Grade.NO_1, Grade.NO_2, Grade.NO_3};
    for (Species species :
        new Species[] {
          Species.DOUGLAS_FIR_LARCH, Species.HEM_FIR, Species.SOUTHERN_PINE, Species.SPRUCE_PINE_FIR
        }) {
      boolean isHeld = valueSet != ValueSet.SOUTHERN_PINE_2012 || species == Species.SOUTHERN_PINE;
      for (Word grade : grades) {
        for (LumberSize size : LumberSize.values()) {
          Asked asked =
              LARCH
                  .with("value_set", valueSet.word())
                  .with("species", species.word())
                  .with("grade", grade.word())
                  .with("size", size.word());
          assertThat(asked.refusal().isEmpty()).isEqualTo(isHeld);
        }
      }
    }
  }

  @Test
  void minModulus_isThatOfItsModulus() {
    // NDS 2018 appendix D, from memory: E_min = 1.03 E (1 − 1.645 × 0.25) ÷ 1.66, to 10,000 psi;
    // a modulus is itself printed to 100,000.
    Arrays.stream(Species.values())
        .flatMap(
            species ->
                Arrays.stream(Grade.values())
                    .map(
                        grade ->
                            LARCH
                                .with("size", "2x4")
                                .with("species", species.word())
                                .with("grade", grade.word())))
        .filter(asked -> asked.refusal().isEmpty())
        .forEach(
            asked ->
                assertThat(asked.number("min_modulus_psi"))
                    .isCloseTo(
                        1.03 * asked.number("modulus_psi") * (1 - 1.645 * 0.25) / 1.66,
                        within(6000d)));
  }
}
