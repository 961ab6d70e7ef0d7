package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.workbook.book.Cells;

/** A table filled into a workbook row by row. */
class FillBookTest {

  private static final int FIRST = 7;

  @Test
  void fillBook_holdsEachColumnToItsLimitsOnce() throws IOException {
    int rows = 2_000;
    byte[] book =
        FillBook.bytes(
            Samples.filled(
                "nails_per_sheet",
                "support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges\n"
                    + "16,6,12,no\n".repeat(rows)));
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      XSSFSheet filled = workbook.getSheet("Filled");
      assertThat(filled.getDataValidations()).hasSize(6); // one a parameter
      for (XSSFDataValidation validation : filled.getDataValidations()) {
        CellRangeAddress cells = validation.getRegions().getCellRangeAddress(0);
        assertThat(List.of(cells.getFirstRow(), cells.getLastRow()))
            .containsExactly(FIRST, FIRST + rows - 1);
      }
      assertThat(filled.getLastRowNum()).isEqualTo(FIRST + rows - 1);
      assertThat(workbook.getName("filled_nails").getRefersToFormula())
          .endsWith("$" + (FIRST + rows));
    }
  }

  @Test
  void fillBook_takesItsFormulasFromARowThatHasResults() throws IOException {
    byte[] book =
        FillBook.bytes(
            Samples.filled(
                "sheets_by_area", "deck_area_sf,waste_pct\nwide,0\n-1,0\n704.36,0\n-1,0\n"));
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      XSSFSheet filled = workbook.getSheet("Filled");
      assertThat(filled.getRow(FIRST).getCell(0).getStringCellValue()).isEqualTo("wide");
      int sheets = filled.getRow(FIRST).getLastCellNum() - 2;
      assertThat(filled.getRow(FIRST + 2).getCell(sheets).getNumericCellValue()).isEqualTo(23);
      assertThat(filled.getRow(FIRST + 1).getCell(sheets).getCellFormula())
          .isEqualTo(filled.getRow(FIRST + 3).getCell(sheets).getCellFormula().replace("11", "9"));
    }
    assertThat(Agreement.differences(Cells.written(book), Cells.byPoi(book))).isEmpty();
  }

  /**
   * A row that is answered in part lends no formulas, and its own cells follow those of the rest.
   */
  @Test
  void fillBook_holdsARowThatIsAnsweredInPart() throws IOException {
    byte[] book =
        FillBook.bytes(
            Samples.filled(
                "nail_resistance",
                """
                diameter_in,length_in,head_diameter_in,shank,specific_gravity,thickness_in,panel_gravity,moisture
                0.131,2.5,0.281,smooth,0.42,7/16,0.5,stays-wet
                0.131,2.5,0.281,smooth,0.42,7/16,0.5,stays-dry
                """));
    assertThat(Agreement.differences(Cells.written(book), Cells.byPoi(book))).isEmpty();
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      XSSFSheet filled = workbook.getSheet("Filled");
      int error = filled.getRow(FIRST).getLastCellNum() - 1;
      assertThat(filled.getRow(FIRST).getCell(error).getStringCellValue())
          .startsWith("moisture says that the panel is wet");
      assertThat(filled.getRow(FIRST).getCell(error - 4).getNumericCellValue()).isPositive();
      assertThat(filled.getRow(FIRST).getCell(error - 3).getCellFormula()).isNotEmpty();
    }
  }
}
