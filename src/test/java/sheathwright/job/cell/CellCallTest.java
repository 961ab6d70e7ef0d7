package sheathwright.job.cell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Numbers are those of the functions' own tests: counted by hand, or printed. */
class CellCallTest {

  @Test
  void numbersAndTexts_goIn_andAResultComesOut_aCell() {
    assertThat(CellCall.results("nails_per_sheet", 16.0, 6.0, 12.0)).containsExactly(43.0);
    assertThat(CellCall.results("nailsPerSheet", 24.0, 6.0, 6.0, "yes")).containsExactly(69.0);
    assertThat(CellCall.results("slope_length", "15-0", 0.0)).containsExactly(15.0);
  }

  @Test
  void aBlank_takesThePreset_andANameSaysWhoseAValueIs() {
    assertThat(CellCall.results("nails_per_sheet", 16.0, 6.0, 12.0, null, null, ""))
        .containsExactly(43.0);
    assertThat(
            CellCall.results("nails_per_sheet", "field_spacing_in=12", "edge_spacing_in=6", 16.0))
        .containsExactly(43.0);
  }

  @Test
  void severalResults_comeInARow_wordsAmongThem() {
    assertThat(CellCall.results("joint_bearing", 48.0, 48.0, 0.0))
        .containsExactly(0.75, 0.75, "yes");
  }

  @Test
  void whatIsRefused_isSaidAsText() {
    assertThat(CellCall.results("nails_per_sheet", 16.0, 0.0, 12.0))
        .containsExactly(
            "refused: edge_spacing_in is 0; it must be from 1 to 24, 6 is usual, 4 in high wind");
    assertThat(CellCall.results("nail_per_shet", 16.0)[0].toString())
        .startsWith(
            "refused: there is no function \"nail_per_shet\"; the nearest are nails_per_sheet");
    assertThat(CellCall.results("slope_factor", 6.0, 7.0))
        .containsExactly("refused: slope_factor takes rise_in_12: \"7\" is one more");
    assertThat(CellCall.results("slope_factor", Double.NaN)[0].toString())
        .startsWith("refused: rise_in_12");
    assertThat(CellCall.results("slope_factor")[0].toString()).startsWith("refused: rise_in_12");
    assertThat(CellCall.working("slope_factor", "steep")).startsWith("refused: rise_in_12");
  }

  @Test
  void aRange_isNoCell_unlessItIsOneCell() {
    Object[][] one = {{6.0}};
    Object[][] two = {{6.0, 7.0}};
    assertThat(CellCall.results("nails_per_sheet", 16.0, one, 12.0)).containsExactly(43.0);
    assertThat(CellCall.results("nails_per_sheet", 16.0, two, 12.0))
        .containsExactly("refused: edge_spacing_in: a range of cells is given; it takes one cell");
    assertThat(CellCall.results("nails_per_sheet", 16.0, new Object[0][0], 12.0)[0].toString())
        .startsWith("refused: edge_spacing_in: a range");
  }

  @Test
  void aLongText_isNotSaidBack() {
    assertThat(CellCall.results("slope_factor", "y".repeat(40_000)))
        .containsExactly(
            "refused: rise_in_12: 40,000 characters are given; at most 60 are allowed");
    assertThat(CellCall.results("y".repeat(40_000))[0].toString()).hasSizeLessThan(300);
  }

  @Test
  void aTableThatCannotBeRead_isSaidAsText() {
    Object[][] table = {{"rise_in_12"}, {1.0}, {6.0, 7.0}};
    assertThat(CellCall.table("slope_factor", table)[0][0].toString())
        .startsWith("refused: cells, line 3: 2 cells under 1 headings");
  }

  @Test
  void theWorking_endsInTheResult() {
    assertThat(CellCall.working("slope_length", 15.0, 0.0)).contains("15' 0\"");
  }

  @Test
  void aTable_comesBackWithAsManyRows_andSaysWhatIsWrongWithEach() {
    Object[][] table = {
      {"support_spacing_in", "edge_spacing_in", "field_spacing_in", "note"},
      {16.0, 6.0, 12.0, "front, \"left\""},
      {19.2, 0.0, 12.0, null},
    };

    Object[][] filled = CellCall.table("nails_per_sheet", table);

    assertThat(filled[0]).containsExactly("nails", "error");
    assertThat(filled[1]).containsExactly(43.0, "");
    assertThat(filled[2][1].toString()).startsWith("edge_spacing_in is 0; it must be");
    assertThat(filled).hasDimensions(3, 2);
  }
}
