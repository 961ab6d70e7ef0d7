package sheathwright.loads.snow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.framing.rafter.PrintedSpan.word;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.RefusedException;
import sheathwright.loads.RiskCategory;
import sheathwright.published.LoadEdition;

/** The factors as copies of ASCE 7-16 print them; no other road leads to a printed choice. */
class SnowFactorsTest {

  /** ASCE 7-16, Table 7.3-1, secondary source. */
  @ParameterizedTest
  @CsvSource({
    "b,                    0.9, 1.0, 1.2",
    "c,                    0.9, 1.0, 1.1",
    "d,                    0.8, 0.9, 1.0",
    "above-treeline,       0.7, 0.8,",
    "alaska-without-trees, 0.7, 0.8,",
  })
  void exposureFactor_isThePrintedOne(
      String terrain, double open, double partly, Double sheltered) {
    SnowTerrain site = word(SnowTerrain.values(), terrain);
    assertThat(SnowFactors.snowExposureFactor(site, SnowShelter.FULLY_EXPOSED).value())
        .isEqualTo(open);
    assertThat(SnowFactors.snowExposureFactor(site, SnowShelter.PARTIALLY_EXPOSED).value())
        .isEqualTo(partly);
    var last = SnowFactors.snowExposureFactor(site, SnowShelter.SHELTERED);
    assertThat(last.refusal().isPresent()).isEqualTo(sheltered == null);
    if (sheltered != null) {
      assertThat(last.value()).isEqualTo(sheltered);
    }
  }

  /** ASCE 7-16, Table 7.3-2, secondary source; taken for 7-10 too, from memory. */
  @ParameterizedTest
  @CsvSource({
    "heated,              1.0",
    "just-above-freezing, 1.1",
    "cold-ventilated,     1.1",
    "unheated,            1.2",
    "open-below,          1.2",
    "kept-below-freezing, 1.3",
    "warm-greenhouse,     0.85",
  })
  void thermalFactor_isThePrintedOne(String warmth, double printed) {
    RoofWarmth roof = word(RoofWarmth.values(), warmth);
    assertThat(SnowFactors.snowThermalFactor(roof, LoadEdition.ASCE7_16).value())
        .isEqualTo(printed);
    assertThat(SnowFactors.snowThermalFactor(roof, LoadEdition.ASCE7_10).value())
        .isEqualTo(printed);
  }

  @ParameterizedTest
  @EnumSource(
      value = RoofWarmth.class,
      names = {"COLD_VENTILATED", "UNHEATED"})
  void thermalFactor_ofColdRoofsIs1Point2Under2022(RoofWarmth warmth) {
    assertThat(SnowFactors.snowThermalFactor(warmth, LoadEdition.ASCE7_22).value()).isEqualTo(1.2);
  }

  @ParameterizedTest
  @EnumSource(
      value = RoofWarmth.class,
      names = {"COLD_VENTILATED", "UNHEATED"},
      mode = EnumSource.Mode.EXCLUDE)
  void thermalFactor_ofOtherRoofsIsNotHeldUnder2022(RoofWarmth warmth) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> SnowFactors.snowThermalFactor(warmth, LoadEdition.ASCE7_22).value())
        .withMessageContaining("the two copies of that table that were seen disagree");
  }

  /** ASCE 7-16, Table 1.5-2, secondary source. */
  @ParameterizedTest
  @CsvSource({"i, 0.8", "ii, 1.0", "iii, 1.1", "iv, 1.2"})
  void importance_isThePrintedOne_and1Under2022(String category, double printed) {
    RiskCategory risk = word(RiskCategory.values(), category);
    assertThat(SnowFactors.snowImportance(risk, LoadEdition.ASCE7_16).value()).isEqualTo(printed);
    assertThat(SnowFactors.snowImportance(risk, LoadEdition.ASCE7_10).value()).isEqualTo(printed);
    assertThat(SnowFactors.snowImportance(risk, LoadEdition.ASCE7_22).value()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heated", "open-below"})
  void refusalUnder2022_namesWhatCanBeAsked(String warmth) {
    var factor =
        SnowFactors.snowThermalFactor(word(RoofWarmth.values(), warmth), LoadEdition.ASCE7_22);
    assertThat(factor.refusal().orElseThrow().reason())
        .endsWith("take it from the standard, or ask for cold-ventilated or unheated");
  }

  @Test
  void shelter_isRefusedAboveTheTrees() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(
            () ->
                SnowFactors.snowExposureFactor(SnowTerrain.ABOVE_TREELINE, SnowShelter.SHELTERED)
                    .value())
        .withMessage(
            "shelter is sheltered; where the terrain is above-treeline no roof is, by the table:"
                + " partially-exposed is the most");
  }
}
