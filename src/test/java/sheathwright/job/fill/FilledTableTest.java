package sheathwright.job.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.table.Filling;

class FilledTableTest {

  private static final String SISTERS = "sag_in,span_ft,tolerance_in,lap_in,rafter_count";

  @Test
  void filledTable_appendsResultsAndAnError() {
    Filling filling =
        Filling.of(
            "nails_per_sheet",
            "support_spacing_in,edge_spacing_in,field_spacing_in",
            "16,6,12",
            "24,6,6");
    assertThat(filling.lines())
        .containsExactly(
            "support_spacing_in,edge_spacing_in,field_spacing_in,nails,error",
            "16,6,12,43,", // 2 × 9 + 5 × 5
            "24,6,6,45,"); // 2 × 9 + 3 × 9
    assertThat(filling.problems()).isEmpty();
  }

  @Test
  void filledTable_takesThePresetForABlankCellAndAnAbsentColumn() {
    // Presets: not blocked, 96 by 48 in. Blocked adds 2 edges × 6 bays × 2 nails.
    assertThat(
            Filling.of(
                    "nails_per_sheet",
                    "support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges",
                    "16,6,12,no",
                    "16,6,12,",
                    "16,6,12,  ",
                    "16,6,12,yes")
                .column("nails"))
        .containsExactly("43", "43", "43", "67");
  }

  @Test
  void filledTable_takesColumnsInAnyOrder() {
    assertThat(
            Filling.of(
                    "nails_per_sheet",
                    "field_spacing_in,blocked_edges,edge_spacing_in,support_spacing_in",
                    "12,,6,16")
                .lines())
        .containsExactly(
            "field_spacing_in,blocked_edges,edge_spacing_in,support_spacing_in,nails,error",
            "12,,6,16,43,");
  }

  @Test
  void filledTable_takesWordsInAnyCase() {
    Filling filling =
        Filling.of(
            "nails_per_sheet",
            "support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges",
            "16,6,12,YES",
            "16,6,12,Yes",
            "16,6,12, yes ");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.column("nails")).containsOnly("67");
  }

  @Test
  void filledTable_takesWordsWithBlanksForHyphens() {
    String rafter = ",16,20,10,Roof Live,240,NDS2018";
    List<String> spans =
        Filling.of(
                "rafter_max_span",
                "species,grade,size,spacing_in,live_psf,dead_psf,load,deflection_limit,value_set",
                "spruce-pine-fir,no-2,2x6,16,20,10,roof-live,240,nds2018",
                "Spruce Pine Fir,No. 2,2X6" + rafter,
                "SPRUCE_PINE_FIR,NO-2,2x6" + rafter)
            .column("span_in");
    assertThat(spans.get(2)).isEqualTo(spans.get(0)).isNotEmpty();
    assertThat(spans.get(1)).as("a point in a grade is not one of our words").isEmpty();
  }

  /** The same sister four ways: a sag of 1-5/8 in over 12 ft and a quarter inch. */
  @Test
  void filledTable_readsLengthsAsTradesmenWriteThem() {
    Filling filling =
        Filling.of(
            "sister_stock",
            SISTERS,
            "1-5/8,12-0 1/4,3/8,24,18",
            "1 5/8,\"12' 0-1/4\"\"\",3/8,24,18",
            "1.625,12.0208333333333333,.375,24.0,18",
            "\"1-5/8\"\"\",\"144-1/4\"\"\",0.375,\"2' 0\"\"\",18");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.column("stock_ft")).containsOnly("14");
    assertThat(filling.column("nails")).containsOnly("468");
    assertThat(filling.column("near_miss_in"))
        .allSatisfy(miss -> assertThat(Double.parseDouble(miss)).isCloseTo(0.25, within(1e-9)));
  }

  @Test
  void filledTable_printsEveryDigitOfANumber() {
    Filling filling =
        Filling.of(
            "sister_stock",
            SISTERS,
            "1-5/8,12.0185,3/8,7,18",
            "0.3751,3,3/8,0.01,1",
            "1/3,19.99,1/7,1/9,7");
    List<FilledRow> rows = filling.table().rows();
    for (int result = 0; result < 6; result++) {
      List<String> printed = filling.column(filling.table().card().results().get(result).column());
      for (int row = 0; row < rows.size(); row++) {
        Traced figure = rows.get(row).results().get(result);
        assertThat(printed.get(row)).matches("-?\\d+(\\.\\d+)?");
        assertThat(Double.parseDouble(printed.get(row))).isEqualTo(((Figure<?>) figure).value());
      }
    }
  }

  @Test
  void filledTable_keepsTheRowsAsTheyWere() {
    assertThat(
            Filling.ofText(
                    "sheets_by_area", "deck_area_sf,waste_pct\n\"1,408.72\", 0 \n\n766.78,5 %\n")
                .lines())
        .containsExactly(
            "deck_area_sf,waste_pct,sheets,error",
            "\"1,408.72\",\" 0 \",45,", // 44.02
            "766.78,5 %,26,"); // 766.78 × 1.05 ÷ 32 = 25.16
  }

  @Test
  void filledTable_carriesNotesThrough() {
    Filling filling =
        Filling.of(
            "sheets_by_area",
            "job,deck_area_sf,note,waste_pct,note_2,id",
            "barn, 704.36 ,\"say, twice\",0,,007");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.lines())
        .containsExactly(
            "job,deck_area_sf,note,waste_pct,note_2,id,sheets,error",
            "barn,\" 704.36 \",\"say, twice\",0,,007,23,");
  }

  @Test
  void filledTable_filledAgainSaysTheSame() {
    String once = Filling.of("sheets_by_area", "deck_area_sf,waste_pct", "704.36,0", "0,0").text();
    Filling twice = Filling.ofText("sheets_by_area", once);
    assertThat(twice.text()).isEqualTo(once);
    assertThat(twice.problems()).hasSize(1);
  }

  @Test
  void filledTable_filledAgainForgetsOldAnswers() {
    assertThat(
            Filling.of(
                    "sheets_by_area",
                    "sheets,deck_area_sf,error,waste_pct",
                    "999,704.36,it was wrong,0")
                .lines())
        .containsExactly("deck_area_sf,waste_pct,sheets,error", "704.36,0,23,");
  }

  @Test
  void filledTable_takesAParameterForAParameterThoughAResultSharesItsName() {
    // Nails are an argument of a sheet's price: they are kept, not taken for an old answer.
    assertThat(Filling.of("piece_unit_price", "nails,hours", "26,1.5").lines().get(0))
        .startsWith("nails,hours,direct_usd,");
  }

  /** Nobody's word is no dryness: a table that leaves moisture out is told what it may say. */
  @Test
  void filledTable_takesNoWoodForDryThatNobodyCalledSo() {
    Filling filling = Filling.of("panel_holding_gravity", "shank", "ring");
    assertThat(filling.column("error"))
        .singleElement()
        .asString()
        .contains("moisture is missing; give one of stays-dry, dries-later");
  }

  /** What is known of a wet panel's nail is written; what no code prints stays blank, said why. */
  @Test
  void filledTable_writesTheResultsThatAreNotRefused() {
    Filling filling =
        Filling.of(
            "nail_resistance",
            "diameter_in,length_in,shank,specific_gravity,thickness_in,panel_gravity,head_diameter_in,moisture",
            "0.131,2.5,smooth,0.42,7/16,0.5,0.281,stays-wet",
            "0.131,2.5,smooth,0.42,7/16,0.5,0.281,stays-dry");
    assertThat(filling.column("penetration_in")).containsExactly("2.0625", "2.0625");
    assertThat(filling.column("withdrawal_lb")).doesNotContain("");
    for (String refused : List.of("pull_through_lb", "resistance_lb", "governs")) {
      assertThat(filling.column(refused)).first().isEqualTo("");
      assertThat(filling.column(refused)).last().isNotEqualTo("");
    }
    assertThat(filling.column("error"))
        .first()
        .asString()
        .startsWith("moisture says that the panel is wet");
    assertThat(filling.column("error")).last().isEqualTo("");
    assertThat(filling.problems())
        .singleElement()
        .asString()
        .contains("line 2, column moisture: moisture says that the panel is wet");
    FilledRow wet = filling.table().rows().get(0);
    assertThat(wet.isRefused()).isFalse();
    assertThat(wet.isAnsweredInPart()).isTrue();
    assertThat(filling.table().rows().get(1).isAnsweredInPart()).isFalse();
  }
}
