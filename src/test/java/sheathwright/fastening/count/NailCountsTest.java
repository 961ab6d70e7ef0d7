package sheathwright.fastening.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Amounts;
import sheathwright.figure.RefusedException;
import sheathwright.roof.SheetSize;

class NailCountsTest {

  private static Asked sheet(String support, String edge, String field) {
    return Asked.of("nails_per_sheet")
        .with("support_spacing_in", support)
        .with("edge_spacing_in", edge)
        .with("field_spacing_in", field);
  }

  /**
   * Nails in a 4 by 8 sheet. A line of nails across it has 5, 9, 13 or 17 of them at 12, 6, 4 or 3
   * in: ⌈(48 − 0.75) ÷ spacing⌉ + 1. Two lines lie on the ends, 96 ÷ support − 1 between. Blocked,
   * each long edge has ⌈bay ÷ edge spacing⌉ − 1 more in every bay. Common practice, no source.
   */
  @ParameterizedTest(name = "supports {0} in, nails {1}/{2} in: {3}, or {4} with blocked edges")
  @CsvSource({
    "16, 6, 12, 43, 67", // 2×9 + 5×5; 6 bays × 2 more, 2 edges
    "16, 6, 6, 63, 87", // 2×9 + 5×9
    "16, 4, 6, 71, 107", // 2×13 + 5×9; 6 bays × 3 more
    "16, 4, 4, 91, 127", // 2×13 + 5×13
    "16, 3, 3, 119, 179", // 2×17 + 5×17; 6 bays × 5 more
    "19.2, 6, 12, 38, 68", // 2×9 + 4×5; 5 bays × 3 more
    "19.2, 6, 6, 54, 84", // 2×9 + 4×9
    "19.2, 4, 6, 62, 102", // 2×13 + 4×9; 5 bays × 4 more
    "19.2, 4, 4, 78, 118", // 2×13 + 4×13
    "24, 6, 12, 33, 57", // 2×9 + 3×5; 4 bays × 3 more
    "24, 6, 6, 45, 69", // 2×9 + 3×9
    "24, 4, 6, 53, 93", // 2×13 + 3×9; 4 bays × 5 more
    "24, 4, 4, 65, 105", // 2×13 + 3×13
    "24, 3, 3, 85, 141" // 2×17 + 3×17; 4 bays × 7 more
  })
  void nailsPerSheet_countsTheUsualSchedules(
      String support, String edge, String field, double open, double blocked) {
    assertThat(sheet(support, edge, field).number("nails")).isEqualTo(open);
    assertThat(sheet(support, edge, field).with("blocked_edges", "no").number("nails"))
        .isEqualTo(open);
    assertThat(sheet(support, edge, field).with("blocked_edges", "yes").number("nails"))
        .isEqualTo(blocked);
  }

  @Test
  void nailsPerSheet_takesABlankSizeForAWholeSheet() {
    Asked whole = sheet("16", "6", "12");
    assertThat(whole.with("sheet_length_in", "96").with("sheet_width_in", "48").number("nails"))
        .isEqualTo(whole.number("nails"));
    // Half a sheet long: 2 × 9 + 2 × 5 = 28. A 24 in strip: a line has ⌈23.25 ÷ 6⌉ + 1 = 5 or
    // ⌈23.25 ÷ 12⌉ + 1 = 3 nails, 2 × 5 + 5 × 3 = 25.
    assertThat(whole.with("sheet_length_in", "48").number("nails")).isEqualTo(28);
    assertThat(whole.with("sheet_width_in", "24").number("nails")).isEqualTo(25);
  }

  /** A thing that is said by halves refuses, and says what is missing. */
  @Test
  void nailsPerSheet_isRefusedWhereTheFieldIsNotSaid() {
    var nails =
        NailCounts.nailsPerSheet(
            Amounts.in(16), Nailing.edge(Amounts.in(6)), SheetSize.FOUR_BY_EIGHT);
    assertThatThrownBy(nails::value)
        .isInstanceOf(RefusedException.class)
        .hasMessageStartingWith("field_spacing_in is missing; give from 1 to 24 in");
  }
}
