package sheathwright.fastening.count;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class NailsToAddTest {

  private static Asked sheet(
      String sound, String support, String edge, String field, String credit) {
    return Asked.of("nails_to_add")
        .with("sound_nails", sound)
        .with("support_spacing_in", support)
        .with("edge_spacing_in", edge)
        .with("field_spacing_in", field)
        .with("credit", credit);
  }

  /** Worked answers of the trade, counted nail by nail on a 4 by 8. */
  @ParameterizedTest(name = "{0} sound at {1}, {2}/{3}, credit {4}")
  @CsvSource({
    "24, 16, 6, 12, yes, 19", // 43 wanted; 31 sheets then take 589
    "33, 24, 6, 6, no, 45", // 62 sheets then take 2790
    "33, 24, 6, 6, yes, 12", // one between each pair on the three inner lines
    "43, 16, 6, 6, yes, 20",
    "0, 24, 4, 4, no, 65", // 62 sheets then take 4030
    "0, 24, 6, 6, yes, 45",
    "45, 24, 6, 6, yes, 0",
    "46, 24, 6, 6, yes, 0",
    "44, 24, 6, 6, yes, 1",
    "500, 24, 6, 6, no, 45"
  })
  void nailsToAdd_isTheWorkedAnswer(
      String sound, String support, String edge, String field, String credit, double nails) {
    assertThat(sheet(sound, support, edge, field, credit).number("nails")).isEqualTo(nails);
  }

  @Test
  void nailsToAdd_knowsBlockedEdgesAndOtherSizes() {
    Asked half = sheet("3", "16", "6", "12", "yes").with("sheet_length_in", "48");
    assertThat(half.number("nails")).isEqualTo(2 * 9 + 2 * 5 - 3);
    Asked blocked = sheet("33", "24", "6", "12", "yes").with("blocked_edges", "yes");
    assertThat(blocked.number("nails")).isEqualTo(57 - 33);
  }

  @Test
  void nailsToAdd_countsWholeNailsOnly() {
    assertThat(sheet("2.5", "16", "6", "12", "yes").refusal().orElseThrow())
        .startsWith("sound_nails is 2.5; it must be a whole number from 0 to 500");
  }
}
