package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.home.HomeBook;

/** The office's page on which a deck is priced that nobody has seen whole. */
class WaysPageTest {

  private static final String PAGE = "Pricing the deck";

  private static Estimate estimate(String job) {
    return new Estimate(Job.of(Samples.tables(job)));
  }

  private static XSSFWorkbook opened(String job) throws IOException {
    return Cells.opened(JobBook.estimate(estimate(job)).bytes());
  }

  @Test
  void aJobWithZones_hasThePage_andNoOther() throws IOException {
    try (XSSFWorkbook zones = opened("quince-hollow");
        XSSFWorkbook none = opened("mistwater-cottage");
        XSSFWorkbook quote = Cells.opened(HomeBook.of(estimate("quince-hollow")).bytes())) {
      assertThat(zones.getSheet(PAGE)).isNotNull();
      assertThat(zones.getSheet("Deck chances")).isNotNull();
      assertThat(none.getSheet(PAGE)).isNull();
      assertThat(quote.getSheet(PAGE)).isNull();
    }
  }

  /** By hand: the bill's worst case is 3 × 96 and 47 × 117; the same as on the quote. */
  @Test
  void everySheetBad_isTheWorstOfTheQuote() throws IOException {
    try (XSSFWorkbook workbook = opened("quince-hollow")) {
      Row unit = line(workbook.getSheet(PAGE), "unit price, sheets included");
      assertThat(unit.getCell(5).getNumericCellValue()).isEqualTo(3 * 96 + 47 * 117);
      for (int column = 1; column <= 9; column++) {
        assertThat(unit.getCell(column).getCellType()).isEqualTo(CellType.FORMULA);
      }
    }
  }

  @Test
  void theChart_isNative_andDrawnFromTheCells() throws IOException {
    try (XSSFWorkbook workbook = opened("quince-hollow")) {
      List<XSSFChart> charts = workbook.getSheet(PAGE).createDrawingPatriarch().getCharts();
      assertThat(charts).hasSize(1);
      assertThat(charts.get(0).getCTChart().toString())
          .contains("barChart", "'Deck chances'!$A$", "'Deck chances'!$B$");
      assertThat(workbook.getSheet(PAGE).createDrawingPatriarch().getCTDrawing().toString())
          .contains("A bar for each number of bad places of the deck from 0 to");
    }
  }

  /** All chances together are one house, however many lines there are. */
  @Test
  void theChances_addUpToOne() throws IOException {
    try (XSSFWorkbook workbook = opened("quince-hollow")) {
      List<Double> chances = new ArrayList<>();
      XSSFSheet sheet = workbook.getSheet("Deck chances");
      Row head = line(sheet, "Bad places");
      for (int row = head.getRowNum() + 1; isNumber(sheet, row); row++) {
        chances.add(sheet.getRow(row).getCell(1).getNumericCellValue());
      }
      assertThat(chances).hasSizeGreaterThan(20);
      assertThat(chances.stream().mapToDouble(each -> each).sum())
          .isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
    }
  }

  private static boolean isNumber(XSSFSheet sheet, int row) {
    Row line = sheet.getRow(row);
    Cell cell = line == null ? null : line.getCell(0);
    return cell != null && cell.getCellType() == CellType.NUMERIC;
  }

  private static Row line(XSSFSheet sheet, String label) {
    for (Row row : sheet) {
      Cell first = row.getCell(0);
      if (first != null && first.toString().equals(label)) {
        return row;
      }
    }
    throw new AssertionError("no line " + label);
  }
}
