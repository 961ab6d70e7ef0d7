package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
  private static final Path STATIONS = Path.of("demo-data", "tallow-end");
  private static final Path MIDDLE = Path.of("demo-data", "mistwater-cottage");
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
  void aFootOfARafterReadAgain_isChangedWithWhoAndWhenAndANewOneAdded() throws IOException {
    LifeFolder job = LifeFolder.of(STATIONS, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(
        crew,
        book -> {
          start(book, "IC");
          cell(foot(book, "S", "S-2", 78), "drop_in").setCellValue("3/16");
          Row more = spareFoot(book);
          cell(more, "plane").setCellValue("S");
          cell(more, "rafter").setCellValue("S-2");
          cell(more, "along_in").setCellValue(36);
          cell(more, "up_in").setCellValue(96);
          cell(more, "drop_in").setCellValue(0.1875);
        });
    String before = job.text("readings.csv");

    assertThat(job.done("take-in", crew).out().lines())
        .containsExactly(
            "readings.csv: S S-2 78 changed (3/16, IC, 2027-06-01)",
            "readings.csv: S S-2 96 new (36, 0.1875, IC, 2027-06-01)");
    assertThat(before).contains("S,S-2,36,78,1/8,\n");
    assertThat(job.text("readings.csv"))
        .contains("S,S-2,36,78,3/16,,IC,2027-06-01\n", "S,S-2,36,96,0.1875,,IC,2027-06-01\n");
    assertThat(job.done("take-in", crew).out())
        .isEqualTo("nothing in them is new: no table is changed\n");
  }

  /**
   * How a rafter lies when it is done stands beside how it lay, which stays what the price is of.
   */
  @Test
  void aRafterReadWhenItIsDone_isKeptBesideWhatWasReadBefore() throws IOException {
    LifeFolder job = LifeFolder.of(STATIONS, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(
        crew,
        book -> {
          start(book, "IC");
          cell(foot(book, "S", "S-2", 78), "done_in").setCellValue("1/16");
        });
    String price = job.done("quote").out().lines().skip(1).findFirst().orElseThrow();

    assertThat(job.done("take-in", crew).out())
        .isEqualTo("readings.csv: S S-2 78 changed (1/16, 2027-06-01, IC, 2027-06-01)\n");
    assertThat(job.text("readings.csv").lines())
        .startsWith("plane,rafter,along_in,up_in,drop_in,note,done_in,done_on,note_by,note_on")
        .contains("S,S-2,36,78,1/8,,1/16,2027-06-01,IC,2027-06-01");
    assertThat(job.done("quote", "--force").out()).contains(price);
    try (XSSFWorkbook book =
        new XSSFWorkbook(
            new ByteArrayInputStream(Files.readAllBytes(job.path().resolve("estimate.xlsx"))))) {
      assertThat(book.getSheet("What we know"))
          .anyMatch(
              row ->
                  row.getCell(0) != null
                      && row.getCell(0).toString().startsWith("Rafters when the work is done"));
    }
  }

  @Test
  void aDayOnWhichNothingWasRead_isRefused() {
    LifeFolder job = LifeFolder.of(MIDDLE, folder.resolve("job"));
    job.write("readings.csv", "plane,rafter,drop_in,done_in,done_on\nA,A-2,3/8,,2027-06-01\n");

    assertThat(job.refused("quote"))
        .startsWith("readings.csv, line 2, column done_in: it is empty, but done_on says");
  }

  @Test
  void aFootThatTwoReadDifferently_isSaidWithBothAndNothingIsWritten() throws IOException {
    LifeFolder job = LifeFolder.of(STATIONS, folder.resolve("job"));
    Path one = crew(job, "one.xlsx");
    Path other = folder.resolve("other.xlsx");
    Files.copy(one, other);
    change(one, book -> read(book, "IC", 0.25));
    change(other, book -> read(book, "TB", 0.375));

    assertThat(job.refused("take-in", one, other))
        .contains(
            "other.xlsx, tab readings, cell ",
            "S S-2 78: \"0.375\" is said here, but \"0.25\" in one.xlsx, tab readings");
    change(other, book -> read(book, "TB", 0.25));
    assertThat(job.done("take-in", one, other).out())
        .contains("S S-2 78 changed (0.25, IC, 2027-06-01)");
  }

  @Test
  void aReadingOfNobody_isRefused() throws IOException {
    LifeFolder job = LifeFolder.of(STATIONS, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(crew, book -> cell(foot(book, "S", "S-2", 78), "drop_in").setCellValue(0.25));

    assertThat(job.refused("take-in", crew)).contains("not by whom and when", "tab start");
  }

  @Test
  void raftersReadAtMidLength_haveAFootEach() throws IOException {
    LifeFolder job = LifeFolder.of(MIDDLE, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(
        crew,
        book -> {
          start(book, "IC");
          cell(found(book.getSheet("readings"), 1, "B-6"), "drop_in").setCellValue(0.875);
        });

    assertThat(job.done("take-in", crew).out())
        .isEqualTo("readings.csv: B B-6 changed (0.875, IC, 2027-06-01)\n");
    assertThat(job.text("readings.csv")).contains("B,B-6,0.875,,IC,2027-06-01\n");
  }

  @Test
  void aScrewThatTheCrewPulled_isAddedOnce() throws IOException {
    LifeFolder job = LifeFolder.of(HIP, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(
        crew,
        book -> {
          start(book, "IC");
          Sheet pulls = book.getSheet("pull_tests");
          Row line = pulls.getRow(heads(pulls).getRowNum() + 1);
          cell(line, "plane").setCellValue("porch");
          cell(line, "screw").setCellValue("no. 10");
          cell(line, "lb").setCellValue(186);
          cell(line, "broke").setCellValue("wood");
        });

    assertThat(job.done("take-in", crew).out())
        .isEqualTo("pull_tests.csv: new (porch, no. 10, 186, wood, IC)\n");
    assertThat(job.done("take-in", crew).out())
        .isEqualTo("nothing in them is new: no table is changed\n");
    change(
        crew,
        book -> {
          Sheet pulls = book.getSheet("pull_tests");
          cell(pulls.getRow(heads(pulls).getRowNum() + 1), "plane").setCellValue("nowhere");
        });
    assertThat(job.refused("take-in", crew)).contains("pull_tests.csv", "nowhere");
  }

  @Test
  void aMarkThatIsGoneFromTheTable_isSaid() throws IOException {
    LifeFolder job = LifeFolder.of(HIP, folder.resolve("job"));
    Path crew = crew(job, "crew.xlsx");
    change(crew, book -> cell(marked(book, "porch-1"), "finding").setCellValue("rot"));
    job.write("marks.csv", job.text("marks.csv").replaceFirst("porch-1,.*\\n", ""));

    assertThat(job.refused("take-in", crew))
        .contains("porch-1 is changed here, but gone from marks.csv");
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

    assertThat(job.refused("take-in", empty)).contains("neither a crew's workbook nor a survey");
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

  private static void read(XSSFWorkbook book, String by, double drop) {
    start(book, by);
    cell(foot(book, "S", "S-2", 78), "drop_in").setCellValue(drop);
  }

  private static Row foot(XSSFWorkbook book, String plane, String rafter, double up) {
    for (Row row : book.getSheet("readings")) {
      if (text(row.getCell(0)).equals(plane)
          && text(row.getCell(1)).equals(rafter)
          && row.getCell(3).getNumericCellValue() == up) {
        return row;
      }
    }
    throw new AssertionError("no foot at " + up);
  }

  private static Row spareFoot(XSSFWorkbook book) {
    Sheet sheet = book.getSheet("readings");
    int last = heads(sheet).getRowNum() + 1;
    while (!text(sheet.getRow(last).getCell(0)).isEmpty()) {
      last++;
    }
    return sheet.getRow(last);
  }

  private static Row found(Sheet sheet, int column, String text) {
    for (Row row : sheet) {
      if (text(row.getCell(column)).equals(text)) {
        return row;
      }
    }
    throw new AssertionError("no row " + text);
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
      if (List.of("sheet", "plane").contains(text(row.getCell(0)))) {
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
