package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class SisterRefusalsTest {

  /** A small sag, so that neither the depth nor the stock stands in the way of other limits. */
  private static final Asked USUAL =
      Asked.of("sister_stock")
          .with("sag_in", "1/4")
          .with("span_ft", "12")
          .with("tolerance_in", "3/8")
          .with("lap_in", "24")
          .with("rafter_count", "4")
          .with("sister_size", "2x12");

  /** The longest stock a yard sells is 20 ft: common practice, no source. */
  @Test
  void sisterStock_refusesASisterLongerThanTheLongestStick() {
    Asked sister = USUAL.with("sag_in", "1").with("lap_in", "120");
    assertThat(sister.with("span_ft", "20").number("stock_ft")).isEqualTo(20);
    assertThat(sister.with("span_ft", "20-0 1/16").refusal())
        .contains(
            "stock_ft is 22; it must be from 8 to 20, the longest stock; splice it to an"
                + " engineer's detail");
  }

  @Test
  void sisterStock_takesALongSpanWhereNothingIsToBeDone() {
    assertThat(USUAL.with("span_ft", "32").number("stock_ft")).isZero();
  }

  /** Dressed 2x4 and 2x6 are 3.5 and 5.5 in deep (PS 20): less sag lies against them, no more. */
  @ParameterizedTest(name = "a {0} reaches a rafter {1} in down, not {2} in")
  @CsvSource({"2x4, 3.49, 3.5, 3-1/2 in", "2x6, 5.49, 5.5, 5-1/2 in"})
  void sisterStock_refusesASisterThatWouldHangClear(
      String size, String reached, String missed, String said) {
    Asked sister = USUAL.with("sister_size", size);
    assertThat(sister.with("sag_in", reached).refusal()).isEmpty();
    assertThat(sister.with("sag_in", missed).refusal())
        .contains(
            "sag_in is "
                + said
                + ", not less than the depth of a "
                + size
                + " sister: set to the string it would not lie against the old rafter at"
                + " mid-length; use a deeper one");
  }
}
