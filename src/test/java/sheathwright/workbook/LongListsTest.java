package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.JobBooks;

/** A job with more of everything than a page holds prints each list under its headings. */
class LongListsTest {

  private static final int MANY = 60;

  @Test
  void everyLongListOfAnEstimate_hasItsHeadingsOnEachOfItsPages() throws Exception {
    StringBuilder marks = new StringBuilder("mark,plane,finding,sheet\n");
    StringBuilder rafters = new StringBuilder("plane,center_in\n");
    for (int i = 0; i < MANY; i++) {
      String plane = i < MANY / 2 ? "A" : "B";
      int inPlane = i % (MANY / 2);
      int course = 1 + inPlane / 6;
      marks.append("M-%d,%s,rot,%s-%d-%d%n".formatted(i, plane, plane, course, 1 + inPlane % 6));
      rafters.append("%s,%d%n".formatted(plane, 16 * inPlane));
    }
    JobText job =
        JobText.demo("quince-hollow")
            .withTable("marks", marks.toString())
            .withTable("rafters", rafters.toString());

    byte[] estimate = JobBooks.of(new Estimate(job.job())).office();

    List<String> wrong = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(estimate)) {
      workbook.forEach(
          sheet ->
              wrong.addAll(
                  PrintedLists.wrong(workbook, (org.apache.poi.xssf.usermodel.XSSFSheet) sheet)));
    }
    assertThat(wrong).isEmpty();
  }
}
