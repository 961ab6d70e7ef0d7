package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.Perturbed;
import sheathwright.workbook.home.HomeBook;

/** What is hardly meant stands on the office's first page, and never in the homeowner's file. */
class QuestionsPageTest {

  private static final String ASKED = "To be asked, as the tables were read";

  /** Fifteen hundredths of a percent where fifteen percent were meant. */
  private static Estimate odd() {
    JobTables tables = Samples.tables("quince-hollow");
    Map<String, CsvFile> files = Perturbed.files(tables);
    files.put("rates", Perturbed.with(files.get("rates"), 4, 1, "0.15"));
    return new Estimate(Job.of(new JobTables(files)));
  }

  private static List<String> texts(byte[] file, int sheets) throws IOException {
    List<String> texts = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      DataFormatter shown = new DataFormatter();
      for (int i = 0; i < Math.min(sheets, workbook.getNumberOfSheets()); i++) {
        XSSFSheet sheet = workbook.getSheetAt(i);
        sheet.forEach(row -> row.forEach(cell -> texts.add(shown.formatCellValue(cell))));
      }
    }
    return texts;
  }

  @Test
  void questions_standOnTheFirstPageOfTheEstimate() throws IOException {
    assertThat(texts(JobBook.estimate(odd()).bytes(), 1))
        .contains(ASKED)
        .anyMatch(
            text ->
                text.contains("rates.csv, line 4, column value: margin_pct: 0.15 is given")
                    && text.contains("did you mean 15?"));
  }

  @Test
  void questions_areNotTheHomeowners() throws IOException {
    assertThat(texts(HomeBook.of(odd()).bytes(), Integer.MAX_VALUE))
        .isNotEmpty()
        .noneMatch(text -> text.contains("margin_pct") || text.contains(ASKED));
  }

  @Test
  void aJobThatAsksNothing_hasNoSuchHeading() throws IOException {
    Estimate usual = new Estimate(Job.of(Samples.tables("quince-hollow")));
    assertThat(texts(JobBook.estimate(usual).bytes(), 1)).isNotEmpty().doesNotContain(ASKED);
  }
}
