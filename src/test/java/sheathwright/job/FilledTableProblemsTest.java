package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.table.Filling;

class FilledTableProblemsTest {

  private static final String NAILS = "support_spacing_in,edge_spacing_in,field_spacing_in";

  @Test
  void filledTable_refusesOneRowAndFillsTheOthers() {
    Filling filling = Filling.of("nails_per_sheet", NAILS, "16,6,12", "16,0,12", "24,6,12");
    assertThat(filling.problems())
        .containsExactly(
            "cases.csv, line 3, column edge_spacing_in: edge_spacing_in is 0; it must be from 1 to"
                + " 24, 6 is usual, 4 in high wind");
    assertThat(filling.column("nails")).containsExactly("43", "", "33");
    assertThat(filling.column("error"))
        .containsExactly(
            "", "edge_spacing_in is 0; it must be from 1 to 24, 6 is usual, 4 in high wind", "");
  }

  @Test
  void filledTable_saysWhatIsNotANumber() {
    Filling filling = Filling.of("nails_per_sheet", NAILS, "wide,6,12", "24,6,12");
    assertThat(filling.problems()).hasSize(1);
    assertThat(filling.problems().get(0))
        .startsWith("cases.csv, line 2, column support_spacing_in: \"wide\" is not a length");
    assertThat(filling.column("nails")).containsExactly("", "33");
    assertThat(filling.column("error").get(0)).startsWith("support_spacing_in: \"wide\" is not");
  }

  @Test
  void filledTable_saysEverythingThatIsWrongWithARow() {
    Filling filling =
        Filling.of("nails_per_sheet", NAILS + ",blocked_edges", "wide,,12,perhaps", "16,6,12,no");
    assertThat(filling.problems()).hasSize(3);
    assertThat(filling.problems())
        .anyMatch(problem -> problem.startsWith("cases.csv, line 2, column support_spacing_in: "))
        .anyMatch(
            problem ->
                problem.startsWith("cases.csv, line 2, column edge_spacing_in: ")
                    && problem.contains("missing"))
        .contains(
            "cases.csv, line 2, column blocked_edges: blocked_edges is \"perhaps\"; it must be one"
                + " of yes, no");
    assertThat(filling.column("nails")).containsExactly("", "43");
    assertThat(filling.column("error").get(0).split("; ")).hasSizeGreaterThanOrEqualTo(3);
  }

  @Test
  void filledTable_saysWhichColumnItDoesNotKnow() {
    Filling filling = Filling.of("sheets_by_area", "deck_area_sf,waste_pct,color", "704.36,0,red");
    assertThat(filling.problems())
        .containsExactly(
            "cases.csv, line 1, column color: this column is not known; sheets_by_area has"
                + " deck_area_sf, waste_pct and note");
    assertThat(filling.lines())
        .containsExactly(
            "deck_area_sf,waste_pct,color,sheets,error",
            "704.36,0,red,23,\"column color: this column is not known; sheets_by_area has"
                + " deck_area_sf, waste_pct and note\"");
  }

  @Test
  void filledTable_carriesNotesAlong() {
    Filling filling = Filling.of("sheets_by_area", "note,deck_area_sf,waste_pct", "south,704.36,0");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.lines())
        .containsExactly("note,deck_area_sf,waste_pct,sheets,error", "south,704.36,0,23,");
  }

  @Test
  void filledTable_refusesANumberThatTwoReadersReadDifferently() {
    Filling filling = Filling.ofText("sheets_by_area", "deck_area_sf;waste_pct\n10,420;0\n");
    assertThat(filling.problems())
        .containsExactly(
            "cases.csv, line 2, column deck_area_sf: \"10,420\" could be 10420 or 10.42 in a file"
                + " with semicolons between its cells; write 10420 or 10.42");
    assertThat(filling.column("sheets")).containsExactly("");
  }

  @Test
  void filledTable_saysWhichColumnIsMissing() {
    Filling filling = Filling.of("sheets_by_area", "deck_area_sf", "704.36", "766.78");
    assertThat(filling.problems())
        .as("said once of the heading, not again of every row")
        .containsExactly(
            "cases.csv, line 1, column waste_pct: this column is missing; the file has deck_area_sf");
    assertThat(filling.column("sheets")).containsExactly("", "");
    assertThat(filling.column("error"))
        .allSatisfy(error -> assertThat(error).startsWith("waste_pct is missing"));
  }

  @Test
  void filledTable_refusesAHeadingThatStandsTwice() {
    Filling filling =
        Filling.of("sheets_by_area", "deck_area_sf,waste_pct,waste_pct", "704.36,0,10");
    assertThat(filling.problems())
        .containsExactly("cases.csv, line 1, column waste_pct: this column appears twice");
  }

  @ParameterizedTest(name = "{0} in a column of feet")
  @ValueSource(strings = {"1-3/8", "12-3/8", "3/8", "12 1/4"})
  void filledTable_refusesABareFractionWhereFeetAreMeant(String span) {
    Filling filling = sisters(span, "12");
    assertThat(filling.problems())
        .singleElement()
        .asString()
        .startsWith(
            "cases.csv, line 2, column span_ft: \""
                + span
                + "\" is not a length that can be read: it could be feet or inches here; write 1-0"
                + " 3/8 or 1' 3/8\", or decimals of a foot");
    assertThat(filling.column("stock_ft")).containsExactly("", "12");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"16-Jul", "Jul-16", "2016-07-01", "7/16/2026", "7/16/26", "7.16.2026"})
  void filledTable_saysWhenASpreadsheetProgramMadeADate(String date) {
    Filling filling = Filling.of("nails_per_sheet", NAILS, "16,6," + date, "16,6,12");
    assertThat(filling.problems()).hasSize(1);
    assertThat(filling.problems().get(0))
        .startsWith("cases.csv, line 2, column field_spacing_in: ")
        .endsWith(
            "; a spreadsheet program may have made a date of it: format the column as text and"
                + " type it again");
    assertThat(filling.column("nails")).containsExactly("", "43");
  }

  @Test
  void filledTable_saysOfADateAmongWordsWhatHappened() {
    Filling filling =
        Filling.of("nails_per_sheet", NAILS + ",blocked_edges", "16,6,12,16-Jul", "16,6,12,no");
    assertThat(filling.problems())
        .containsExactly(
            "cases.csv, line 2, column blocked_edges: blocked_edges is \"16-Jul\"; it must be one"
                + " of yes, no; a spreadsheet program may have made a date of it: format the column"
                + " as text and type it again");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"NaN", "Infinity", "1e400", "-1e400", "0x10", "1d", "--5", "=1+1"})
  void filledTable_refusesWhatOnlyAComputerCallsANumber(String odd) {
    Filling filling = Filling.of("sheets_by_area", "deck_area_sf,waste_pct", odd + ",0", "32,0");
    assertThat(filling.problems()).hasSize(1);
    assertThat(filling.problems().get(0)).startsWith("cases.csv, line 2");
    assertThat(filling.column("sheets")).containsExactly("", "1");
    assertThat(filling.column("error").get(0)).isNotEmpty();
  }

  @Test
  void filledTable_ofNoRowsIsAHeading() {
    assertThat(Filling.of("sheets_by_area", "deck_area_sf,waste_pct").lines())
        .containsExactly("deck_area_sf,waste_pct,sheets,error");
  }

  @Test
  void filledTable_keepsWhatIsGivenBesideWhatIsRefused() {
    // The sister would be 20 ft and a sixteenth: its length is known, the stick is not.
    Filling filling = sisters("20-0 1/16", "12");
    assertThat(Double.parseDouble(filling.column("length_ft").get(0)))
        .isCloseTo(20 + 1 / 16d / 12, within(1e-9));
    assertThat(filling.column("stock_ft").get(0)).isEmpty();
    assertThat(filling.column("error").get(0)).isNotEmpty();
    assertThat(filling.column("stock_ft").get(1)).isEqualTo("12");
  }

  private static Filling sisters(String... spans) {
    String[] lines = new String[spans.length + 1];
    lines[0] = "sag_in,span_ft,tolerance_in,lap_in,rafter_count";
    for (int i = 0; i < spans.length; i++) {
      lines[i + 1] = "1," + spans[i] + ",3/8,120,1";
    }
    return Filling.of("sister_stock", lines);
  }
}
