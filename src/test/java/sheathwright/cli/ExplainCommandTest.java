package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExplainCommandTest {

  @Test
  void explain_showsTheWorkingAndTheAnswer() {
    CommandRun ran =
        CommandRun.of(
            "explain",
            "nails_per_sheet",
            "support_spacing_in=16",
            "edge_spacing_in=6",
            "field_spacing_in=12");
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    // 2 × 9 + 5 × 5
    assertThat(ran.out()).contains("43 nails/sheet").contains("3/8 in").contains("16 in");
  }

  @Test
  void explain_readsLengthsAsTradesmenWriteThem() {
    CommandRun ran =
        CommandRun.of(
            "explain",
            "sister_stock",
            "sag_in=1-5/8",
            "span_ft=12-0 1/4",
            "tolerance_in=3/8",
            "lap_in=24",
            "rafter_count=18");
    assertThat(ran.status()).isZero();
    assertThat(ran.out()).contains("14' 0\"").contains("468 nails");
  }

  @Test
  void explain_saysEverythingThatIsWrong() {
    CommandRun ran =
        CommandRun.of("explain", "nails_per_sheet", "edge_spacing_in=wide", "color=red");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .hasSize(4)
        .anyMatch(line -> line.startsWith("support_spacing_in is missing; give a number of inches"))
        .anyMatch(line -> line.startsWith("edge_spacing_in: \"wide\" is not a length"))
        .anyMatch(
            line ->
                line.startsWith(
                    "field_spacing_in is missing; give from 1 to 24 inches, 12 or 6 are usual"))
        .contains(
            "nails_per_sheet has no parameter color; it has support_spacing_in, edge_spacing_in,"
                + " field_spacing_in, blocked_edges, sheet_length_in, sheet_width_in");
  }

  @Test
  void explain_ofAValueOutOfItsRangeSaysTheRange() {
    CommandRun ran = CommandRun.of("explain", "sheets_by_area", "deck_area_sf=0", "waste_pct=5");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().strip())
        .isEqualTo(
            "deck_area_sf is 0; it must be from 1 to 200000, measured on the slope; a house has 500"
                + " to 5000");
  }

  @Test
  void explain_ofSomethingWithoutAnEqualsSignIsWrongUse() {
    CommandRun ran = CommandRun.of("explain", "sheets_by_area", "1408.72");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).startsWith("\"1408.72\" is not of the form parameter=value");
  }

  @Test
  void explain_ofAnUnknownFunctionNamesTheNearest() {
    CommandRun ran = CommandRun.of("explain", "sheet_by_area", "deck_area_sf=1");
    assertThat(ran.status()).isNotZero();
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("there is no function \"sheet_by_area\"", "sheets_by_area");
  }
}
