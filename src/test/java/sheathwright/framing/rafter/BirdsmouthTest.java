package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** A level seat on a slope, by the right triangle: its depth square to the edge is l_b sin θ. */
class BirdsmouthTest {

  private static final Asked RAFTER =
      Asked.of("rafter_screening")
          .with("species", "douglas-fir-larch")
          .with("grade", "no-2")
          .with("size", "2x6")
          .with("moisture", "dry")
          .with("spacing_in", "16")
          .with("roof_live_psf", "20")
          .with("snow_psf", "0")
          .with("dead_psf", "10")
          .with("deflection_limit", "180")
          .with("value_set", "nds2018")
          .with("span_ft", "6")
          .with("rise_in_12", "6")
          .with("tie_height_in", "0")
          .with("bearing_in", "1.5");

  /** 1-1/2 in at 6 in 12: 0.671 of 1.375 in; 3-1/2 in: 1.565, more than a quarter of a 2x6. */
  @ParameterizedTest
  @CsvSource({"1.5, 0.4879", "3.5, 1.1383"})
  void aCutThatNobodyMeasured_isAsDeepAsItsBearingAndSlopeMakeIt(String bearing, double ratio) {
    Asked rafter = RAFTER.with("bearing_in", bearing);
    assertThat(rafter.number("notch_ratio")).isCloseTo(ratio, within(0.0001));
    assertThat(rafter.with("notch_in", "0").number("notch_ratio")).isCloseTo(ratio, within(0.0001));
    assertThat(rafter.answer("ok")).isEqualTo(ratio > 1 ? "no" : "yes");
  }

  @Test
  void aCutThatIsDeeperThanItsSeatAsks_isTakenAsGiven() {
    assertThat(RAFTER.with("notch_in", "1.25").number("notch_ratio"))
        .isCloseTo(1.25 / 1.375, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"measured", "stamped", "told", "assumed"})
  void aCutThatSomebodyKnows_isTakenAsGiven(String known) {
    assertThat(RAFTER.with("notch_in", "1/4").with("notch_known", known).number("notch_ratio"))
        .isCloseTo(0.25 / 1.375, within(1e-9));
  }
}
