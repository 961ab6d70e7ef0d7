package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.job.table.Filling;

/** Tables as spreadsheet programs save them. */
class FilledTableTextTest {

  @Test
  void filledTable_readsPastAByteOrderMark() {
    Filling filling = Filling.ofText("sheets_by_area", "\uFEFFdeck_area_sf,waste_pct\n704.36,0\n");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.column("sheets")).containsExactly("23");
  }

  @Test
  void filledTable_readsWindowsLineEnds() {
    Filling filling =
        Filling.ofText("sheets_by_area", "deck_area_sf,waste_pct\r\n704.36,0\r\n766.78,0\r\n");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.column("sheets")).containsExactly("23", "24");
  }

  @Test
  void filledTable_readsSemicolonsWithDecimalCommas() {
    Filling filling =
        Filling.ofText(
            "sister_stock",
            "sag_in;span_ft;tolerance_in;lap_in;rafter_count\n1,6250;12,0185;0,375;24;18\n1-5/8;12-0 1/4;3/8;24;18\n");
    assertThat(filling.problems()).isEmpty();
    assertThat(filling.column("stock_ft")).containsExactly("14", "14");
    assertThat(filling.column("nails")).containsExactly("468", "468");
  }

  @Test
  void filledTable_ofSemicolonsCanBeFilledAgain() {
    String once = Filling.ofText("sheets_by_area", "deck_area_sf;waste_pct\n704,36;0\n").text();
    assertThat(Filling.ofText("sheets_by_area", once).text()).isEqualTo(once);
  }

  @Test
  void filledTable_writesPlainLineEndsWhateverItRead() {
    assertThat(Filling.ofText("sheets_by_area", "deck_area_sf,waste_pct\r\n704.36,0\r\n").text())
        .isEqualTo("deck_area_sf,waste_pct,sheets,error\n704.36,0,23,\n");
  }
}
