package sheathwright.workbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.table.ProblemsException;

/** Two issues side by side, from names and cells alone. */
class IssuesTest {

  /** A page with a total, its document, and marks with their widths. */
  private static byte[] issue(String document, double total, Object... marks) {
    try (XSSFWorkbook book = new XSSFWorkbook();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      Sheet sheet = book.createSheet("Page");
      Row top = sheet.createRow(0);
      top.createCell(0).setCellValue(total);
      top.createCell(1).setCellValue(document);
      name(book, "quote_total_usd", "Page!$A$1");
      name(book, "document_number", "Page!$B$1");
      for (int i = 0; i < marks.length; i += 2) {
        Row row = sheet.createRow(2 + i / 2);
        row.createCell(0).setCellValue((String) marks[i]);
        row.createCell(1).setCellValue((Integer) marks[i + 1]);
      }
      int last = 2 + marks.length / 2;
      name(book, "marks_mark", "Page!$A$3:$A$" + last);
      name(book, "marks_width_in", "Page!$B$3:$B$" + last);
      book.write(bytes);
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static void name(XSSFWorkbook book, String name, String formula) {
    Name named = book.createName();
    named.setNameName(name);
    named.setRefersToFormula(formula);
  }

  @Test
  void marksAreToldByTheirNames_whereverTheyStand() {
    Issues issues =
        Issues.of(
            "one", issue("QH-01 issue 1", 100, "A", 12, "B", 20, "C", 9),
            "two", issue("QH-01 issue 2", 87.5, "C", 9, "B", 26, "D", 4));

    assertThat(issues.words())
        .containsExactly(
            "The price: $100.00 before, $87.50 now, $12.50 less",
            "Mark A is gone: width 12",
            "Mark B: width 20 before, 26 now, 6 more",
            "Mark D is new: width 4");
    assertThat(issues.rows())
        .contains(
            new Issues.Row("The price", "$100.00", "$87.50", "-$12.50"),
            new Issues.Row("Mark B, width", "20", "26", "6"));
  }

  @Test
  void whatSaysTheSame_isSaid() {
    byte[] one = issue("QH-01 issue 1", 100, "A", 12);

    assertThat(Issues.of("one", one, "two", one).words())
        .containsExactly("both say the same of marks, quantities, prices and dollars");
  }

  @Test
  void twoJobs_areNotCompared() {
    assertThatThrownBy(
            () ->
                Issues.of(
                    "one", issue("QH-01 issue 1", 100, "A", 12),
                    "two", issue("CB-01 change order 02", 100, "A", 12)))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "two: it is CB-01 change order 02, and one is QH-01 issue 1; name two issues of one job");
  }
}
