package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;

/** The pages that the office hands to others: the crew's, the order, the hours. */
class CrewPageTest {

  private static byte[] book;

  @BeforeAll
  static void write() {
    book = JobBook.estimate(new Estimate(JobText.demo("mistwater-cottage").job())).bytes();
  }

  private static XSSFSheet sheet(String name) throws Exception {
    return Cells.opened(book).getSheet(name);
  }

  private static List<String> texts(XSSFSheet sheet) {
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (isText(cell)) {
          texts.add(cell.getStringCellValue());
        }
      }
    }
    return texts;
  }

  private static boolean isText(Cell cell) {
    return cell.getCellType() == CellType.STRING
        || cell.getCellType() == CellType.FORMULA
            && cell.getCachedFormulaResultType() == CellType.STRING;
  }

  private static List<Double> numbersBeside(XSSFSheet sheet, String rafter) {
    List<Double> numbers = new ArrayList<>();
    for (Row row : sheet) {
      Cell first = row.getCell(0);
      if (first != null && isText(first) && first.getStringCellValue().equals(rafter)) {
        for (int column = 2; column < row.getLastCellNum(); column++) {
          numbers.add(row.getCell(column).getNumericCellValue());
        }
      }
    }
    return numbers;
  }

  /**
   * Rafter A-8 is 1-5/8 in low at mid-length of 12 ft 1/4 in. On a parabola it lies 1.625 × (1 −
   * (2x ÷ 144.25 − 1)²) low at x: at 1 ft 0.496, at 3 ft 1.217, at 6 ft 1.625, to sixteenths 1/2,
   * 1-3/16 and 1-5/8. Before them stand 0 ft 0 in from the bearing, 12 ft 1/4 in long.
   */
  @Test
  void sisterMarks_areSixteenthsAtEachFoot() throws Exception {
    assertThat(numbersBeside(sheet("Sisters A"), "A-8"))
        .startsWith(0.0, 0.0, 12.0, 0.25, 0.0, 0.5)
        .contains(1.1875, 1.625)
        .hasSize(4 + 13 + 1)
        .allMatch(number -> number * 16 == Math.rint(number * 16));
  }

  @Test
  void orderAndHours_areOnePage_andAPlanesPagesAreAsManyAsItTakes() throws Exception {
    assertThat(sheet("Crew A").getPrintSetup().getFitHeight()).isZero();
    for (String name : List.of("Order", "Hours")) {
      assertThat(sheet(name).getPrintSetup().getFitHeight()).as(name).isEqualTo((short) 1);
      assertThat(sheet(name).getPrintSetup().getLandscape()).as(name).isFalse();
    }
    assertThat(sheet("Crew A").getDrawingPatriarch()).isNotNull();
  }

  @Test
  void theCrew_readsWhatStopsAndNothingOfPrices() throws Exception {
    List<String> all = texts(sheet("Crew A"));
    assertThat(all)
        .contains("STOP: a licensed engineer decides before any repair")
        .anyMatch(text -> text.startsWith("Falls: "))
        .noneMatch(text -> text.contains("$") || text.contains("price"));
    assertThat(texts(sheet("Crew B"))).noneMatch(text -> text.startsWith("Falls: "));
  }

  @Test
  void theOrder_sellsNothingThatWaits() throws Exception {
    List<String> order = texts(sheet("Order"));
    int waits = order.indexOf("After the engineer's decision");
    assertThat(waits).isPositive();
    assertThat(order.indexOf("2x8 14 ft")).isGreaterThan(waits);
    assertThat(order).noneMatch(text -> text.contains("$") || text.contains("sister sticks"));
  }

  @Test
  void whatNobodyHandsOut_standsLast() throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      int last = workbook.getNumberOfSheets() - 1;
      assertThat(workbook.getSheetName(last - 2)).isEqualTo("Working");
      assertThat(workbook.getSheetName(last - 1)).isEqualTo("Tables");
      assertThat(workbook.getSheetName(last)).isEqualTo("Names");
      XSSFSheet working = workbook.getSheet("Working");
      // It is not printed with the others: its print area is a cell below all that it holds.
      assertThat(workbook.getPrintArea(workbook.getSheetIndex(working)))
          .endsWith("$A$" + (working.getLastRowNum() + 2));
    }
  }
}
