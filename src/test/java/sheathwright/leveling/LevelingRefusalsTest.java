package sheathwright.leveling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** What stands beyond the numbers that a rule was made for is refused where it would count. */
class LevelingRefusalsTest {

  /** The ranges are the texts' own; which numbers stand in them is StatedRangesTest's. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "sag_fraction: sag_in=1, span_ft=12, fraction=59 | fraction is",
        "string_sag: string_ft=40, line_lb_per_ft=0.0005, tension_lb=20, place_ft=201 | place_ft is",
        "shim_thickness: build_up_in=25 | build_up_in is",
        "shim_thickness: build_up_in=1, step_in=9999 | step_in is",
        "shim_taper: first_thickness_in=0.5, last_thickness_in=1, length_ft=2, most_in_12=9999 | most_in_12 is",
        "sister_lap: build_up_in=9999, sister_size=2x6, rafter_size=2x6 | build_up_in is",
        "sister_lap: build_up_in=1, sister_size=2x6, rafter_size=2x6, least_lap_in=9999 | least_lap_in is",
        "sister_stock: tolerance_in=0.375, lap_in=24, sag_in=9999, span_ft=12, sister_size=2x6, rafter_count=1 | sag_in is",
        "sister_stock: tolerance_in=0.375, lap_in=24, sag_in=1, span_ft=12, sister_size=2x6, rafter_count=0.5 | rafter_count is",
        "leveling_action: build_up_in=25 | build_up_in is"
      })
  void whatNoRuleIsFor_isRefused(String call, String reason) {
    assertThat(Asked.line(call).refusedOutright().orElseThrow()).contains(reason);
  }

  /** A word that is named in passing, as at the prompt, takes its parameter's name. */
  @Test
  void aWordInPassing_takesItsParametersName() {
    assertThat(
            Asked.line("leveling_action: build_up_in=-1, leave_in=0.125, shim_in=0.375, truss=yes")
                .workingInPassing())
        .contains("since truss is yes");
  }
}
