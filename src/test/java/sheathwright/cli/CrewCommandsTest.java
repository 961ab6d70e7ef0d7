package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A crew's workbook on its way to the roof and back into the job's tables. */
class CrewCommandsTest {

  private static final Path GABLE = Path.of("demo-data", "quince-hollow");
  private static final Path HIP = Path.of("demo-data", "cinder-brook");
  private static final String DAY = "2027-06-01";

  @TempDir private Path folder;

  @Test
  void whatACrewFinds_isAddedOnceWithWhoAndWhen() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(
        crew,
        book -> {
          start(book, "IC");
          row(book, "A-1-2", Map.of("finding", "rot", "probe_in", 0.625, "photo", "photos/r1.jpg"));
          row(book, "A-1-3", Map.of("finding", "soft", "by", "TB", "note", "by the gutter"));
          log(book, "sheet", 2, 1.5);
        });

    CommandRun taken = job.done("take-in", crew);

    assertThat(taken.out().lines())
        .containsExactly(
            "marks.csv: A-1-2 new (rot, 0.625, IC, 2027-06-01, A, A-1-2, surveyed)",
            "marks.csv: A-1-3 new (soft, TB, by the gutter, 2027-06-01, A, A-1-3, surveyed)",
            "photos.csv: new (photos/r1.jpg, A-1-2, before, 2027-06-01, IC)",
            "log.csv: new (2027-06-01, sheet, 2, 1.5, IC)");
    assertThat(job.text("marks.csv").lines().filter(line -> line.startsWith("A-1-3,A,soft")))
        .singleElement()
        .asString()
        .contains(DAY, "TB", "by the gutter");

    String marks = job.text("marks.csv");
    assertThat(job.done("take-in", crew).out())
        .isEqualTo("nothing in them is new: no table is changed\n");
    assertThat(job.text("marks.csv")).isEqualTo(marks);
  }

  @Test
  void twoPhones_areTakenInTogether() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path one = crew(job, "one.xlsx");
    Path other = folder.resolve("other.xlsx");
    Files.copy(one, other);
    change(one, book -> filled(book, "IC", "A-1-2", "rot"));
    change(other, book -> filled(book, "TB", "B-2-1", "soft"));

    job.done("take-in", one, other);

    assertThat(job.text("marks.csv")).contains("A-1-2,A,rot", "B-2-1,B,soft");
  }

  @Test
  void whatTwoSayDifferently_isSaidWithBothAndNothingIsWritten() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path one = crew(job, "one.xlsx");
    Path other = folder.resolve("other.xlsx");
    Files.copy(one, other);
    change(one, book -> filled(book, "IC", "A-1-2", "rot"));
    change(other, book -> filled(book, "IC", "A-1-2", "soft"));

    assertThat(job.refused("take-in", one, other))
        .startsWith("other.xlsx, tab Crew A, cell ")
        .contains(
            "column finding: A-1-2: \"soft\" is said here, but \"rot\" in one.xlsx, tab Crew A");
  }

  @Test
  void aMarkThatOnlyTheCrewChanged_isChangedAndOneThatTheOfficeChangedTooIsNot()
      throws IOException {
    LifeFolder job = LifeFolder.of(HIP, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(
        crew,
        book -> {
          Row mark = marked(book, "porch-1");
          cell(mark, "finding").setCellValue("rot");
        });
    String before = job.text("marks.csv");

    assertThat(job.done("take-in", crew).out()).isEqualTo("marks.csv: porch-1 changed (rot)\n");
    assertThat(job.text("marks.csv"))
        .isEqualTo(before.replace("porch-1,porch,hole", "porch-1,porch,rot"));

    job.write("marks.csv", before.replace("porch-1,porch,hole", "porch-1,porch,soft"));
    assertThat(job.refused("take-in", crew))
        .contains("\"rot\" is said here, but \"soft\" in marks.csv");
  }

  @Test
  void aCellThatIsNotAllowed_isSaidWithTabAndCell() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(crew, book -> filled(book, "IC", "A-1-2", "rotten"));

    assertThat(job.refused("take-in", crew))
        .matches("crew.xlsx, tab Crew A, cell [A-Z]\\d+, column finding: .*rotten.*");
  }

  @Test
  void aFindingWithoutInitials_isRefused() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(crew, book -> row(book, "A-1-2", Map.of("finding", "rot", "on", DAY)));

    assertThat(job.refused("take-in", crew)).contains("column by: it is empty", "tab start");
  }

  @Test
  void whatIsNoCrewsWorkbook_isRefused() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path empty = folder.resolve("empty.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(empty)) {
      book.createSheet("Sheet1");
      book.write(out);
    }
    Path garbage = folder.resolve("garbage.xlsx");
    Files.write(garbage, new byte[] {'P', 'K', 3, 4, 9, 9, 9});

    assertThat(job.refused("take-in", empty)).contains("no crew's workbook");
    assertThat(job.refused("take-in", garbage)).contains("garbage.xlsx");
  }

  @Test
  void noPriceStandsInIt_andNoFormula() throws IOException {
    for (Path demo : new Path[] {GABLE, HIP, Path.of("demo-data", "tallow-end")}) {
      LifeFolder job = LifeFolder.of(demo, folder.resolve(demo.getFileName().toString()));
      job.write("prices.csv", job.text("prices.csv").replaceFirst("sheet,[^,]*", "sheet,38.4713"));
      job.write("rates.csv", job.text("rates.csv").replaceFirst("_h,[^,]*", "_h,46.1327"));
      Path crew = crew(job, demo.getFileName() + ".xlsx");

      assertThat(everything(crew).replace("overhead lines", "wires above"))
          .doesNotContain(
              "38.4713",
              "46.1327",
              "price_",
              "_usd",
              ".csv",
              "from memory",
              "overhead",
              "margin",
              "$");
      try (XSSFWorkbook book = opened(crew)) {
        for (Sheet sheet : book) {
          for (Row row : sheet) {
            row.forEach(cell -> assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA));
          }
          assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo((short) 1);
        }
      }
    }
  }

  @Test
  void everyPlaceHasARowWithDropDowns() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    try (XSSFWorkbook book = opened(crew(job, "crew.xlsx"))) {
      XSSFSheet sheet = book.getSheet("Crew A");
      Cell finding = cell(place(book, "A-1-2"), "finding");
      assertThat(
              sheet.getDataValidations().stream()
                  .filter(
                      held ->
                          Stream.of(held.getRegions().getCellRangeAddresses())
                              .anyMatch(range -> range.isInRange(finding)))
                  .map(DataValidation::getPromptBoxText))
          .singleElement()
          .asString()
          .startsWith("Finding: one of the words");
    }
  }

  private Path crew(LifeFolder job, String name) {
    Path file = folder.resolve(name);
    job.done("crew", "-o", file);
    return file;
  }

  private static void filled(XSSFWorkbook book, String by, String place, String finding) {
    start(book, by);
    row(book, place, Map.of("finding", finding));
  }

  private static void start(XSSFWorkbook book, String by) {
    for (Row row : book.getSheet("start")) {
      String key = text(row.getCell(0));
      if (key.equals("by") || key.equals("on")) {
        row.getCell(1).setCellValue(key.equals("by") ? by : DAY);
      }
    }
  }

  private static void row(XSSFWorkbook book, String place, Map<String, Object> cells) {
    Row row = place(book, place);
    cells.forEach(
        (column, value) -> {
          if (value instanceof Double number) {
            cell(row, column).setCellValue(number);
          } else {
            cell(row, column).setCellValue(value.toString());
          }
        });
  }

  private static void log(XSSFWorkbook book, String task, double quantity, double hours) {
    Row row = book.getSheet("log").getRow(4);
    row.getCell(0).setCellValue(DAY);
    row.getCell(1).setCellValue(task);
    row.getCell(2).setCellValue(quantity);
    row.getCell(3).setCellValue(hours);
  }

  private static Row place(XSSFWorkbook book, String place) {
    return found(book, 0, place);
  }

  private static Row marked(XSSFWorkbook book, String mark) {
    return found(book, 1, mark);
  }

  private static Row found(XSSFWorkbook book, int column, String text) {
    for (Sheet sheet : book) {
      if (sheet.getSheetName().startsWith("Crew ")) {
        for (Row row : sheet) {
          if (row.getRowNum() > heads(sheet).getRowNum()
              && text(row.getCell(column)).equals(text)) {
            return row;
          }
        }
      }
    }
    throw new AssertionError("no row " + text);
  }

  private static Row heads(Sheet sheet) {
    for (Row row : sheet) {
      if (text(row.getCell(0)).equals("sheet")) {
        return row;
      }
    }
    throw new AssertionError("no headings");
  }

  private static Cell cell(Row row, String column) {
    for (Cell head : heads(row.getSheet())) {
      if (text(head).equals(column)) {
        return row.getCell(head.getColumnIndex());
      }
    }
    throw new AssertionError("no column " + column);
  }

  private static String text(Cell cell) {
    return cell == null ? "" : new DataFormatter().formatCellValue(cell);
  }

  private static void change(Path file, Consumer<XSSFWorkbook> change) throws IOException {
    try (XSSFWorkbook book = opened(file);
        OutputStream out = Files.newOutputStream(file)) {
      change.accept(book);
      book.write(out);
    }
  }

  private static XSSFWorkbook opened(Path file) throws IOException {
    try (InputStream in = new ByteArrayInputStream(Files.readAllBytes(file))) {
      return new XSSFWorkbook(in);
    }
  }

  private static String everything(Path file) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String part = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        all.append(
            entry.getName().matches(".*(sheet\\d+|sharedStrings|comments.*|drawing.*)\\.xml")
                ? part
                : part.replaceAll("\\$", "")); // formats and addresses of names
      }
    }
    return all.toString();
  }
}
