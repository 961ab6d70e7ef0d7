package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.SolvedCells;

/** A number typed over an amount, a price or a total makes a check fail, whichever cell it was. */
class OverwrittenCellsTest {

  private static final List<String> TOTALS = List.of("quote_total_usd", "worst_case_usd");
  private static final List<String> LISTED =
      List.of("lines_amount_usd", "lines_price_usd", "held_amount_usd", "held_price_usd");
  private static final List<String> QUOTED =
      List.of(
          "planned_sheet_quoted_usd",
          "extra_sheet_quoted_usd",
          "sister_quoted_usd",
          "shim_quoted_usd");

  /** As the first page and others repeat them. */
  private static final List<String> TOLD_AGAIN =
      List.of(
          "shown_quote_total_usd",
          "shown_worst_case_usd",
          "shown_planned_sheets",
          "shown_extra_sheet_quoted_usd");

  static Stream<String> jobs() {
    return Samples.JOBS.stream();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void inTheEstimate(String job) throws Exception {
    List<String> names = new ArrayList<>(LISTED);
    names.addAll(TOTALS);
    names.addAll(TOLD_AGAIN);
    names.addAll(QUOTED);
    eachIsSeen(JobBook.estimate(new Estimate(Job.of(Samples.tables(job)))).bytes(), names);
  }

  private static void eachIsSeen(byte[] file, List<String> names) throws Exception {
    Map<String, List<String>> cells = new LinkedHashMap<>(SolvedCells.cellsByName(file));
    cells.keySet().retainAll(names);
    assertThat(cells).hasSizeGreaterThan(5).containsKeys(TOLD_AGAIN.toArray(String[]::new));
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      Cell failing = at(workbook, workbook.getName("checks_failing").getRefersToFormula());
      double before = evaluator.evaluate(failing).getNumberValue();
      for (Map.Entry<String, List<String>> named : cells.entrySet()) {
        for (String address : named.getValue()) {
          Cell cell = at(workbook, "'" + address.replace("!", "'!"));
          double right = evaluator.evaluate(cell).getNumberValue();
          boolean isFormula = cell.getCellType() == CellType.FORMULA;
          String formula = isFormula ? cell.getCellFormula() : "";
          cell.setBlank();
          cell.setCellValue(right == 17 ? 19 : 17);
          evaluator.clearAllCachedResultValues();
          assertThat(evaluator.evaluate(failing).getNumberValue())
              .as("checks that fail when %s at %s is overwritten", named.getKey(), address)
              .isGreaterThan(before);
          if (isFormula) {
            cell.setCellFormula(formula);
          } else {
            cell.setCellValue(right);
          }
          evaluator.clearAllCachedResultValues();
        }
      }
      assertThat(evaluator.evaluate(failing).getNumberValue()).isEqualTo(before);
    }
  }

  private static Cell at(XSSFWorkbook workbook, String formula) {
    CellReference at = new CellReference(formula);
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}
