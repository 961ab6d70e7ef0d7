package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;

/** The settlement of found against sold prints on one page, however many marks stand behind it. */
class SheetsPageTest {

  @Test
  void theSettlement_isOnePage_andTheMarksFollowOnTheirOwn() throws Exception {
    List<List<String>> pages = pages(new Estimate(JobText.opened("kettle-reach").job()));
    assertThat(pages).hasSize(1);
    assertThat(pages.get(0)).contains("In the price", "All of it").doesNotContain("R-1", "U-8");
  }

  @Test
  void withoutMarks_allOfItIsOnePage() throws Exception {
    List<List<String>> pages = pages(new Estimate(JobText.demo("quince-hollow").job()));
    assertThat(pages).hasSize(1);
    assertThat(pages.get(0)).contains("In the price", "Mark by mark");
  }

  /** What stands in the first column, parted where the tab itself begins a page. */
  private static List<List<String>> pages(Estimate estimate) throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(JobBook.estimate(estimate).bytes())) {
      Sheet sheet = workbook.getSheet("Sheets");
      DataFormatter shown = new DataFormatter();
      List<List<String>> pages = new ArrayList<>(List.of(new ArrayList<>()));
      for (Row row : sheet) {
        pages.get(pages.size() - 1).add(shown.formatCellValue(row.getCell(0)));
        if (sheet.isRowBroken(row.getRowNum())) {
          pages.add(new ArrayList<>());
        }
      }
      return pages;
    }
  }
}
