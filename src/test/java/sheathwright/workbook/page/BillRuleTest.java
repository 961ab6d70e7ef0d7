package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;

/** The bill's rule in the homeowner's file, changed there: words and worst case follow. */
class BillRuleTest {

  /**
   * By hand: 20 by 12 ft and 20 by 12 ft 1/2 in are 15 by halves and 18 places; 480.83 sq ft are
   * 15.03 sheets, so 15.25. $1,288 holds two of them, and each one more is $127.
   */
  @ParameterizedTest
  @CsvSource({
    "half, 2939, a piece of over 16 sq ft; one of up to 16 sq ft is half a sheet",
    "place, 3320, 'any one piece that lies there, whole or cut'",
    "area, 2970.75, '32 sq ft of it, the sum up to the next quarter'"
  })
  void wordsAndWorstCase_followTheRule(String rule, double worst, String words) throws Exception {
    Estimate estimate = new Estimate(JobText.small().job());
    try (XSSFWorkbook workbook = Cells.opened(JobBook.quote(estimate).bytes())) {
      cell(workbook, "bill_rule").setCellValue(rule);
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      assertThat(evaluator.evaluate(cell(workbook, "worst_case_usd")).getNumberValue())
          .isEqualTo(worst);
      assertThat(evaluator.evaluate(cell(workbook, "one_sheet_is")).getStringValue())
          .isEqualTo(words);
    }
  }

  private static Cell cell(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}
