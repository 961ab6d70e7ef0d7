package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.workbook.page.FillBook;
import sheathwright.workbook.page.Samples;

/** A text stands in a workbook as it was typed. */
class CellTextTest {

  /** What a spreadsheet program's file would take for a character by its number, or cannot hold. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "_x0041_",
        "a_x0041_x0042_b",
        "_x005F_",
        "_x005f_x0041_",
        "__x0041_",
        "_x41_",
        "x_y",
        "a\u0001b",
        "a\uFFFEb",
        "a\uD83Cb",
        "\uD83C\uDFE0"
      })
  void rule35_aText_isReadBackAsTyped(String typed) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      workbook.createSheet().createRow(0).createCell(0).setCellValue(CellText.of(typed));
      workbook.write(bytes);
    }
    try (XSSFWorkbook workbook = Cells.opened(bytes.toByteArray())) {
      assertThat(workbook.getSheetAt(0).getRow(0).getCell(0).getStringCellValue()).isEqualTo(typed);
    }
  }

  /** And so does what a user typed beside a filled function. */
  @ParameterizedTest
  @ValueSource(strings = {"_x0041_", "\uD83C\uDFE0"})
  void aNoteInAFilledTable_isReadBackAsTyped(String typed) throws IOException {
    byte[] book =
        FillBook.bytes(
            Samples.filled(
                "sheets_by_area", "note,deck_area_sf,waste_pct\n" + typed + ",704.36,0\n"));
    assertThat(Cells.written(book)).isNotEmpty();
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      assertThat(workbook.getSheet("Filled"))
          .anySatisfy(
              row ->
                  assertThat(row).anySatisfy(cell -> assertThat(cell.toString()).isEqualTo(typed)));
    }
  }
}
