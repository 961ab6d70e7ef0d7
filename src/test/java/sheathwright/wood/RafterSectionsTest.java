package sheathwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** What sticks measure, by how they came to their size. */
class RafterSectionsTest {

  private static Asked stick(String size, String stock) {
    return Asked.of("section_properties").with("size", size).with("stock", stock);
  }

  // PS 20, secondary source: minus 1/2 in to 6 in nominal, minus 3/4 above; green 1-9/16 thick.
  // The other sizes from memory; of two memories of the old 2x6, 5-1/2 and 5-5/8, the smaller.
  @ParameterizedTest
  @CsvSource({
    "2x4,  dressed,   1.5,    3.5",
    "2x6,  dressed,   1.5,    5.5",
    "2x8,  dressed,   1.5,    7.25",
    "2x10, dressed,   1.5,    9.25",
    "2x12, dressed,   1.5,    11.25",
    "2x8,  green,     1.5625, 7.5",
    "2x4,  pre-1970,  1.625,  3.625",
    "2x6,  pre-1970,  1.625,  5.5",
    "2x8,  pre-1970,  1.625,  7.5",
    "2x10, pre-1970,  1.625,  9.5",
    "2x12, pre-1970,  1.625,  11.5",
    "2x10, full-sawn, 2,      10"
  })
  void stock_saysWhatASizeMeasures(String size, String stock, double thickness, double depth) {
    Asked stick = stick(size, stock);
    assertThat(stick.number("actual_thickness_in")).isEqualTo(thickness);
    assertThat(stick.number("actual_depth_in")).isEqualTo(depth);
    assertThat(stick.number("section_sq_in")).isCloseTo(thickness * depth, within(1e-12));
  }

  @Test
  void section_isTheSumOfItsStrips() {
    // A thousand strips of a measured 1-11/16 by 9-3/8: I = Σ b h y², S = I ÷ (d ÷ 2).
    Asked stick =
        stick("2x10", "measured").with("thickness_in", "1-11/16").with("depth_in", "9-3/8");
    double strip = 9.375 / 1000;
    double second = 0;
    for (int i = 0; i < 1000; i++) {
      double y = (i + 0.5) * strip - 9.375 / 2;
      second += 1.6875 * strip * y * y;
    }
    assertThat(stick.number("second_moment_in4")).isCloseTo(second, within(second * 2e-6));
    assertThat(stick.number("section_modulus_in3"))
        .isCloseTo(second / (9.375 / 2), within(second * 1e-6));
  }

  @Test
  void rippedStock_hasNoGrade() {
    assertThat(stick("2x8", "ripped").refusal().orElseThrow())
        .startsWith("stock is ripped: sawing a stick lengthwise voids its grade");
    Asked wood =
        Asked.of("design_values")
            .with("moisture", "dry")
            .with("species", "hem-fir")
            .with("grade", "no-2")
            .with("size", "2x8")
            .with("value_set", "nds2018")
            .with("load_duration", "snow")
            .with("spacing_in", "16")
            .with("stock", "ripped");
    assertThat(wood.refusal().orElseThrow()).startsWith("stock is ripped");
  }

  @Test
  void measuredStock_needsBothMeasures() {
    Asked stick = stick("2x8", "measured").with("thickness_in", "1.6");
    assertThat(stick.refusal()).contains("measured stock needs both thickness_in and depth_in");
    assertThat(stick.with("depth_in", "7.4").refusal()).isEmpty();
  }

  @Test
  void whatIsMeasured_beatsWhatIsNamed() {
    Asked stick = stick("2x8", "full-sawn").with("depth_in", "7-7/8");
    assertThat(stick.number("actual_thickness_in")).isEqualTo(2);
    assertThat(stick.number("actual_depth_in")).isEqualTo(7.875);
    assertThat(stick("2x8", "ripped").with("depth_in", "5.5").with("thickness_in", "1.5").refusal())
        .isPresent();
  }
}
