package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;

/**
 * What is sold of the framing follows the decision, and the decision follows how a fact is known,
 * in the cells of both files and not only when they are written.
 */
class LiveFramingTest {

  private static final JobText SOUND = JobText.demo("tallow-end");

  /** 4 sisters and 2 shims are sold, until the cell says that nobody knows the span. */
  @Test
  void theOfficesFile_sellsNoFramingWorkOnceAFactIsUnknown() throws Exception {
    follows(JobBook::estimate);
  }

  private static void follows(Function<Estimate, JobBook> maker) throws Exception {
    Estimate sound = new Estimate(SOUND.job());
    Estimate unknown =
        new Estimate(SOUND.with("job", "span_known,measured", "span_known,unknown").job());
    assertThat(unknown.total().value()).isLessThan(sound.total().value());
    try (XSSFWorkbook workbook = changed(maker, "span_known", "unknown")) {
      assertThat(text(workbook, "decision")).isEqualTo("not inspected: nobody may say");
      assertThat(text(workbook, "may_repair")).isEqualTo("no");
      assertThat(number(workbook, "quote_total_usd")).isEqualTo(unknown.total().value());
      assertThat(number(workbook, "worst_case_usd")).isEqualTo(unknown.quote().worstCase().value());
    }
    try (XSSFWorkbook workbook = changed(maker, "span_known", "assumed")) {
      assertThat(text(workbook, "decision")).endsWith("only as assumed: look first");
      assertThat(number(workbook, "quote_total_usd")).isEqualTo(unknown.total().value());
    }
  }

  /** The sound job's file with one cell typed over. */
  private static XSSFWorkbook changed(Function<Estimate, JobBook> maker, String name, String text) {
    XSSFWorkbook workbook = Cells.opened(maker.apply(new Estimate(SOUND.job())).bytes());
    at(workbook, name).setCellValue(text);
    return workbook;
  }

  private static String text(XSSFWorkbook workbook, String name) {
    return evaluated(workbook, name).getStringValue();
  }

  private static double number(XSSFWorkbook workbook, String name) {
    return evaluated(workbook, name).getNumberValue();
  }

  private static CellValue evaluated(XSSFWorkbook workbook, String name) {
    FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    return evaluator.evaluate(at(workbook, name));
  }

  private static Cell at(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}
