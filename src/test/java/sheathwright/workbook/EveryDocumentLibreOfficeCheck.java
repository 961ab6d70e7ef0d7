package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.life.back.TakingIn;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.audit.Audit;
import sheathwright.workbook.audit.AuditTrial;
import sheathwright.workbook.audit.Verdict;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.CrewBook;
import sheathwright.workbook.page.IntakeBook;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.paper.LifeBooks;
import sheathwright.workbook.paper.MakerRecordBook;
import sheathwright.workbook.told.Photos;

/**
 * Every document of a job opened by LibreOffice with some inputs changed, recalculated, saved, and
 * read back: what was changed is found and followed, nothing else is; what a crew and a surveyor
 * filled in comes into the job's tables. One run of the program does all of it.
 */
class EveryDocumentLibreOfficeCheck {

  private static final Path DEMO = Path.of("demo-data", "tallow-end");
  private static final String DAY = "2027-06-01";
  private static final int CHANGED = 3;
  private static final long SEED = 17;

  @TempDir private Path folder;

  @Test
  void everyDocument_comesBackWithWhatWasChangedInIt() throws Exception {
    Map<String, byte[]> books = new LinkedHashMap<>(LifeBooks.all());
    Estimate estimate = new Estimate(Job.in(DEMO));
    JobBooks both = JobBooks.of(new Estimate(Job.of(Samples.tables("quince-hollow"))));
    books.put("quote", both.homeowner());
    books.put("estimate", both.office());
    books.put("maker-record", MakerRecordBook.of(estimate, Photos.none()).bytes());
    AuditTrial trial = new AuditTrial(books, SEED);
    List<Path> files = new ArrayList<>();
    for (Map.Entry<String, byte[]> book : books.entrySet()) {
      files.add(written(book.getKey(), trial.filledIn(book.getValue(), CHANGED)));
    }
    files.add(written("crew", CrewBook.bytes(estimate)));
    change("crew", EveryDocumentLibreOfficeCheck::fillInCrew);
    files.add(written("survey", IntakeBook.bytes()));
    change("survey", EveryDocumentLibreOfficeCheck::fillInSurvey);

    Path saved = folder.resolve("saved");
    LibreOffice.convert(files, saved, Recalculation.ALWAYS);

    int filledIn = 0;
    for (Map.Entry<String, byte[]> book : books.entrySet()) {
      byte[] file = Files.readAllBytes(saved.resolve(book.getKey() + ".xlsx"));
      assertThat(AuditTrial.alarms(book.getValue(), file)).as(book.getKey()).isEmpty();
      List<String> changed =
          followed(book.getValue(), Files.readAllBytes(folder.resolve(book.getKey() + ".xlsx")));
      assertThat(followed(book.getValue(), file)).as(book.getKey()).isEqualTo(changed);
      filledIn += changed.isEmpty() ? 0 : 1;
    }
    assertThat(filledIn).as("documents in which somebody may fill in something").isGreaterThan(4);
    assertThat(new TakingIn(job(), List.of(saved.resolve("crew.xlsx"))).write())
        .containsExactly(
            "marks.csv: S-1-2 new (rot, IC, 2027-06-01, S, S-1-2, surveyed)",
            "readings.csv: S S-2 78 changed (0.1875, IC, 2027-06-01)");
    assertThat(new TakingIn(folder.resolve("job"), List.of(saved.resolve("survey.xlsx"))).write())
        .containsExactly(
            "reports.csv: F-90 new (split, over the bath)",
            "photos.csv: new (photos/a.png, F-90, open)");
  }

  /** The inputs that were changed. */
  private static List<String> followed(byte[] book, byte[] file) {
    return Audit.between(book, file).findings().stream()
        .filter(finding -> finding.verdict() == Verdict.FOLLOW)
        .map(finding -> finding.sheet() + "!" + finding.cell() + "=" + finding.now())
        .toList();
  }

  private Path job() throws Exception {
    Path job = Files.createDirectory(folder.resolve("job"));
    try (var tables = Files.list(DEMO)) {
      for (Path table : tables.filter(Files::isRegularFile).toList()) {
        Files.copy(table, job.resolve(table.getFileName()));
      }
    }
    return job;
  }

  private Path written(String name, byte[] book) throws Exception {
    return Files.write(folder.resolve(name + ".xlsx"), book);
  }

  /** Changes cells of a book. */
  private interface Hand {
    void fillIn(XSSFWorkbook book);
  }

  private void change(String name, Hand hand) throws Exception {
    Path file = folder.resolve(name + ".xlsx");
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(file));
        OutputStream out = Files.newOutputStream(file)) {
      hand.fillIn(book);
      book.write(out);
    }
  }

  private static void fillInCrew(XSSFWorkbook book) {
    row(book.getSheet("start"), 0, "by").getCell(1).setCellValue("IC");
    row(book.getSheet("start"), 0, "on").getCell(1).setCellValue(DAY);
    cell(row(book.getSheet("Crew S"), 0, "S-1-2"), "sheet", "finding").setCellValue("rot");
    for (Row row : book.getSheet("readings")) {
      if (text(row.getCell(1)).equals("S-2") && text(row.getCell(3)).equals("78")) {
        cell(row, "plane", "drop_in").setCellValue(0.1875);
      }
    }
  }

  private static void fillInSurvey(XSSFWorkbook book) {
    Row report = below(book.getSheet("reports"), "report");
    cell(report, "report", "report").setCellValue("F-90");
    cell(report, "report", "seen").setCellValue("split");
    cell(report, "report", "where").setCellValue("over the bath");
    Row photo = below(book.getSheet("photos"), "photo");
    cell(photo, "photo", "photo").setCellValue("photos/a.png");
    cell(photo, "photo", "report").setCellValue("F-90");
    cell(photo, "photo", "view").setCellValue("open");
  }

  private static Row below(Sheet sheet, String first) {
    return sheet.getRow(row(sheet, 0, first).getRowNum() + 1);
  }

  private static Row row(Sheet sheet, int column, String text) {
    for (Row row : sheet) {
      if (text(row.getCell(column)).equals(text)) {
        return row;
      }
    }
    throw new AssertionError("no row " + text + " on " + sheet.getSheetName());
  }

  private static Cell cell(Row row, String first, String column) {
    for (Cell head : row(row.getSheet(), 0, first)) {
      if (text(head).equals(column)) {
        return row.getCell(head.getColumnIndex());
      }
    }
    throw new AssertionError("no column " + column);
  }

  private static String text(Cell cell) {
    return cell == null ? "" : new DataFormatter().formatCellValue(cell);
  }
}
