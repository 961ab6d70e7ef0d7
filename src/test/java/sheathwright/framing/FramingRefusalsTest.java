package sheathwright.framing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** What stands beyond the numbers that a rule was made for is refused where it would count. */
class FramingRefusalsTest {

  /** The ranges are the texts' own; which numbers stand in them is StatedRangesTest's. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "framing_stop: worst_ratio=9999999, seen=nothing | worst_ratio is",
        "ridge_stop: rise_in_12=999, ridge=board | rise_in_12 is",
        "rafter_thrust: span_ft=24, rise_in_12=6, spacing_in=16, load_psf=401, tie_height_in=0 | load_psf is",
        "nails_along_sister: sister_bears=yes, sister_share=1.1, span_ft=12, spacing_in=16, live_psf=20, dead_psf=10, nail_spacing_in=12, lateral_lb=100 | sister_share is",
        "nails_along_sister: sister_bears=yes, sister_share=0.5, span_ft=12, spacing_in=16, live_psf=20, dead_psf=10, nail_spacing_in=9999, lateral_lb=100 | nail_spacing_in is",
        "uplift_tie: spacing_in=999, wind_mph=115, exposure=b, roof_span_ft=24, rise_in_12=6, tie_lb=500 | spacing_in is",
        "uplift_tie: spacing_in=24, wind_mph=999, exposure=b, roof_span_ft=24, rise_in_12=6, tie_lb=500 | wind_mph is",
        "uplift_tie: spacing_in=24, wind_mph=115, exposure=b, roof_span_ft=999, rise_in_12=6, tie_lb=500 | roof_span_ft is",
        "uplift_tie: spacing_in=24, wind_mph=115, exposure=b, roof_span_ft=24, rise_in_12=999, tie_lb=500 | rise_in_12 is",
        "uplift_tie: spacing_in=24, wind_mph=115, exposure=b, roof_span_ft=24, rise_in_12=6, tie_lb=9999999 | tie_lb is"
      })
  void whatNoRuleIsFor_isRefused(String call, String reason) {
    assertThat(Asked.line(call).refusedOutright().orElseThrow()).contains(reason);
  }
}
