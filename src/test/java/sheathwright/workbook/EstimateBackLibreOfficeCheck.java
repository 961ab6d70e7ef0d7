package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.life.back.CrewTabs;
import sheathwright.life.back.TakingIn;
import sheathwright.life.record.JobWorkbook;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.CrewBook;
import sheathwright.workbook.page.IntakeBook;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/** What LibreOffice opened, recalculated and saved is read back as well. */
class EstimateBackLibreOfficeCheck {

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"quince-hollow", "cinder-brook", "tallow-end"})
  void anUntouchedEstimate_givesTheSameTotal(String name) throws Exception {
    Estimate estimate = new Estimate(Job.of(Samples.tables(name)));
    Files.write(folder.resolve("estimate.xlsx"), JobBook.estimate(estimate).bytes());

    JobWorkbook back = JobWorkbook.in(saved());

    assertThat(back.estimate().total().value()).isEqualTo(estimate.total().value());
    assertThat(back.revisions().newest().changes()).containsExactly("nothing in the tables");
  }

  @Test
  void aChangedInput_isFollowedByBothAlike() throws Exception {
    Estimate estimate = new Estimate(Job.of(Samples.tables("quince-hollow")));
    Path file = folder.resolve("estimate.xlsx");
    Files.write(file, JobBook.estimate(estimate).bytes());
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(file));
        OutputStream out = Files.newOutputStream(file)) {
      CellReference price = named(book, "price_sheet_usd");
      book.getSheet("prices").getRow(price.getRow()).getCell(price.getCol()).setCellValue(52.25);
      book.write(out);
    }

    Path saved = saved();
    JobWorkbook back = JobWorkbook.in(saved);

    assertThat(back.revisions().newest().changes()).containsExactly("prices, sheet: 38.5 → 52.25");
    assertThat(back.estimate().total().value()).isGreaterThan(estimate.total().value());
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(saved))) {
      CellReference total = named(book, "quote_total_usd");
      assertThat(
              book.getSheet(total.getSheetName())
                  .getRow(total.getRow())
                  .getCell(total.getCol())
                  .getNumericCellValue())
          .isCloseTo(back.estimate().total().value(), within(0.005));
    }
  }

  @Test
  void aCrewsWorkbook_isTakenIn() throws Exception {
    Path job = Files.createDirectory(folder.resolve("job"));
    for (String table : List.of("job", "planes", "prices", "rates", "reports")) {
      Path from = Path.of("demo-data", "quince-hollow", table + ".csv");
      Files.copy(from, job.resolve(table + ".csv"));
    }
    Path file = folder.resolve("estimate.xlsx");
    Files.write(file, CrewBook.bytes(new Estimate(Job.in(job))));
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(file));
        OutputStream out = Files.newOutputStream(file)) {
      answered(book, "start", "by", "IC");
      answered(book, "start", "on", "2027-06-01");
      for (Row row : book.getSheet("Crew A")) {
        if (row.getCell(0) != null && row.getCell(0).toString().equals("A-1-2")) {
          row.getCell(CrewTabs.COLUMNS.indexOf(CrewTabs.FINDING)).setCellValue("rot");
          row.getCell(CrewTabs.COLUMNS.indexOf("probe_in")).setCellValue(0.625);
        }
      }
      book.write(out);
    }

    List<String> taken = new TakingIn(job, List.of(saved())).write();

    assertThat(taken)
        .containsExactly("marks.csv: A-1-2 new (rot, 0.625, IC, 2027-06-01, A, A-1-2, surveyed)");
  }

  @Test
  void aSurveysFirstCall_isTakenIn() throws Exception {
    Path job = Files.createDirectory(folder.resolve("job"));
    Files.copy(Path.of("demo-data", "quince-hollow", "job.csv"), job.resolve("job.csv"));
    Path file = folder.resolve("estimate.xlsx");
    Files.write(file, IntakeBook.bytes());
    String question = "Where are leaks or stains, and since when?";
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(file));
        OutputStream out = Files.newOutputStream(file)) {
      answered(book, "first_call", question, "over the porch, since May");
      book.write(out);
    }

    List<String> taken = new TakingIn(job, List.of(saved())).write();

    assertThat(taken)
        .containsExactly("first_call.csv: " + question + " new (over the porch, since May)");
  }

  /** Answers what a tab asks under a key. */
  private static void answered(XSSFWorkbook book, String tab, String key, String answer) {
    for (Row row : book.getSheet(tab)) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(key)) {
        row.getCell(1).setCellValue(answer);
      }
    }
  }

  private static CellReference named(XSSFWorkbook book, String name) {
    return new CellReference(book.getName(name).getRefersToFormula());
  }

  private Path saved() throws Exception {
    Path out = folder.resolve("saved");
    LibreOffice.convert(List.of(folder.resolve("estimate.xlsx")), out, Recalculation.ALWAYS);
    return out.resolve("estimate.xlsx");
  }
}
