package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** A forecast in a filled table says when it no longer belongs to the numbers beside it. */
class RowGuardTest {

  private static final String HOUSES =
      "sheets,seen,seen_bad,alpha,beta,ceiling_sheets,cost_usd\n"
          + "44,18,1,1.47,21.8,5,102.8\n44,0,0,1.47,21.8,5,102.8\n";

  @Test
  void aSolvedRow_saysSolveAgainOnceOneOfItsArgumentsChanges() throws Exception {
    byte[] bytes = FillBook.bytes(Samples.filled("ceiling_charge", HOUSES));
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      XSSFSheet sheet = book.getSheet("Filled");
      Row headings = row(sheet, "sheets");
      Row first = sheet.getRow(headings.getRowNum() + 1);
      Row second = sheet.getRow(headings.getRowNum() + 2);
      assertThat(state(book, headings, first)).isEqualTo("current");

      cell(headings, first, "seen").setCellValue(17);
      assertThat(state(book, headings, first)).isEqualTo("solve again");
      assertThat(state(book, headings, second)).isEqualTo("current");

      // What a sheet costs is multiplied live: the forecast beside it stays.
      cell(headings, second, "cost_usd").setCellValue(200);
      assertThat(state(book, headings, second)).isEqualTo("current");
      double over = cell(headings, second, "sheets_over").getNumericCellValue();
      assertThat(
              book.getCreationHelper()
                  .createFormulaEvaluator()
                  .evaluate(cell(headings, second, "charge_usd"))
                  .getNumberValue())
          .isCloseTo(200 * over, within(1e-9));
    }
  }

  private static String state(XSSFWorkbook book, Row headings, Row row) {
    return book.getCreationHelper()
        .createFormulaEvaluator()
        .evaluate(cell(headings, row, "state"))
        .getStringValue();
  }

  private static Row row(XSSFSheet sheet, String first) {
    return StreamSupport.stream(sheet.spliterator(), false)
        .filter(row -> row.getCell(0) != null && row.getCell(0).toString().equals(first))
        .findFirst()
        .orElseThrow();
  }

  private static Cell cell(Row headings, Row row, String heading) {
    return StreamSupport.stream(headings.spliterator(), false)
        .filter(cell -> cell.toString().equals(heading))
        .map(cell -> row.getCell(cell.getColumnIndex()))
        .findFirst()
        .orElseThrow();
  }
}
