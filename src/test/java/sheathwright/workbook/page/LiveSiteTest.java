package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;

/** What follows from the code and the wind follows in the cells too, when somebody changes them. */
class LiveSiteTest {

  /** IRC 2018 prints 6 and 12 in, 43 nails on 16 in; IRC 2021 6 and 6 in, 63. */
  @Test
  void anotherCode_nailsTheSheetsAnew() throws Exception {
    try (XSSFWorkbook workbook = quince()) {
      assertThat(number(workbook, "nails_in_a_sheet")).isEqualTo(43);
      at(workbook, "code").setCellValue("irc-2021");
      assertThat(number(workbook, "nails_in_a_sheet")).isEqualTo(63);
    }
  }

  /**
   * At 150 mph the table has ended and the zones are nailed for their uplift, 6 in at most: 63
   * nails away from the edges, where 12 in stood.
   */
  @Test
  void wherePrescriptionEnds_theZonesAreNailedForTheirUplift() throws Exception {
    try (XSSFWorkbook workbook = quince()) {
      at(workbook, "wind_mph").setCellValue(150);
      assertThat(number(workbook, "nails_in_a_sheet")).isEqualTo(63);
    }
  }

  private static XSSFWorkbook quince() {
    return Cells.opened(
        JobBook.estimate(new Estimate(JobText.demo("quince-hollow").job())).bytes());
  }

  private static double number(XSSFWorkbook workbook, String name) {
    CellValue value =
        workbook.getCreationHelper().createFormulaEvaluator().evaluate(at(workbook, name));
    return value.getNumberValue();
  }

  private static Cell at(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}
