package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A survey filled in on the roof and in the attic, on its way into the job's tables. */
class SurveyBackTest {

  private static final Path GABLE = Path.of("demo-data", "quince-hollow");

  @TempDir private Path folder;

  @Test
  void aSurvey_fillsInAJobOfWhichNothingIsKnownYet() throws IOException {
    LifeFolder job = begun();
    Path survey =
        survey(
            book -> {
              key(book, "job_name", "Porch roof");
              key(book, "quote_date", "10/04/2027");
              row(book, "planes", 0, Map.of("plane", "A", "eave_ft", "30-6"));
              row(book, "planes", 1, Map.of("plane", "porch", "eave_ft", 12.0));
              row(book, "reports", 0, Map.of("report", "F-1", "seen", "split", "where", "attic"));
              row(book, "readings", 0, Map.of("plane", "A", "rafter", "A-1", "drop_in", "3/8"));
              row(book, "layers", 0, Map.of("material", "plywood", "layers", 1.0));
            });

    CommandRun taken = job.done("take-in", survey);

    assertThat(taken.out().lines())
        .containsExactly(
            "job.csv: job_name changed (Porch roof)",
            "job.csv: quote_date changed (10/04/2027)",
            "planes.csv: A changed (30-6)",
            "planes.csv: porch new (12)",
            "readings.csv: A A-1 new (3/8)",
            "reports.csv: F-1 new (split, attic)",
            "layers.csv: new (plywood, 1)",
            "next: ./sheathwright quote %s says what is still missing".formatted(job.path()));
    assertThat(job.text("job.csv")).contains("job_name,Porch roof,", "quote_date,10/04/2027,");
    assertThat(job.text("planes.csv")).contains("\nA,30-6,", "\nporch,12,");
    assertThat(job.text("readings.csv")).doesNotContain("up_in").contains("\nA,A-1,3/8,");

    assertThat(job.done("take-in", survey).out())
        .startsWith("nothing in them is new: no table is changed\n");
  }

  /** Only what was answered: eight questions stand there and say nothing. */
  @Test
  void whatWasSaidOnTheFirstCall_isTakenInAndStandsInTheEstimate() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path survey =
        survey(book -> answered(book, "How many stories has it?", "two, and a steep back"));

    CommandRun taken = job.done("take-in", survey);

    assertThat(taken.out().lines())
        .containsExactly("first_call.csv: How many stories has it? new (two, and a steep back)");
    assertThat(job.text("first_call.csv").lines())
        .containsExactly("question,answer", "How many stories has it?,\"two, and a steep back\"");
    assertThat(job.done("take-in", survey).out())
        .isEqualTo("nothing in them is new: no table is changed\n");
    job.done("quote");
    try (XSSFWorkbook book =
        new XSSFWorkbook(
            new ByteArrayInputStream(Files.readAllBytes(job.path().resolve("estimate.xlsx"))))) {
      assertThat(book.getSheet("What we know"))
          .anyMatch(row -> text(row.getCell(0)).equals("How many stories has it?"));
    }
  }

  @Test
  void anAnswerThatTheTableSaysOtherwise_isSaidWithBothAndNothingIsWritten() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    job.write("first_call.csv", "question,answer\nHow many stories has it?,one\n");
    Path survey = survey(book -> answered(book, "How many stories has it?", "two"));

    assertThat(job.refused("take-in", survey))
        .startsWith("survey.xlsx, tab first_call, cell B")
        .contains("How many stories has it?: \"two\" is said here, but \"one\" in first_call.csv");
    assertThat(job.text("first_call.csv")).contains(",one");
  }

  private static void answered(XSSFWorkbook book, String question, String answer) {
    for (Row row : book.getSheet("first_call")) {
      if (text(row.getCell(0)).equals(question)) {
        row.getCell(1).setCellValue(answer);
      }
    }
  }

  @Test
  void whatTheTablesSayOtherwise_isSaidWithBothAndNothingIsWritten() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path survey =
        survey(
            book -> {
              row(book, "planes", 0, Map.of("plane", "A", "eave_ft", 17.0));
              row(book, "planes", 1, Map.of("plane", "B", "joint_in", 12.0));
            });

    assertThat(job.refused("take-in", survey))
        .startsWith("survey.xlsx, tab planes, cell ")
        .contains("column eave_ft: A: \"17\" is said here, but ", " in planes.csv");
  }

  @Test
  void lengthsThatAreWrittenInTwoWays_areNoDispute() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    job.write("planes.csv", "plane,eave_ft,slope_length_ft\nA,30-6,16-0\nB,30.5,16\n");
    Path survey =
        survey(
            book -> {
              row(book, "planes", 0, Map.of("plane", "A", "eave_ft", 30.5));
              row(book, "planes", 1, Map.of("plane", "B", "eave_ft", "30' 6\""));
            });

    assertThat(job.done("take-in", survey).out())
        .isEqualTo("nothing in them is new: no table is changed\n");
  }

  @Test
  void aJobThatCouldBeRead_staysSo() throws IOException {
    LifeFolder job = LifeFolder.of(GABLE, folder.resolve("job"));
    Path survey =
        survey(
            book ->
                row(
                    book,
                    "marks",
                    0,
                    Map.of("mark", "M-1", "plane", "nowhere", "finding", "rot", "sheet", "A-1-2")));

    assertThat(job.refused("take-in", survey)).contains("marks.csv", "nowhere");
  }

  @Test
  void aCellThatIsNotAllowed_andALineWithoutItsName_areSaidWithTabAndCell() throws IOException {
    LifeFolder job = begun();
    Path wrong = survey(book -> row(book, "planes", 0, Map.of("plane", "A", "eave_ft", "wide")));
    Path nameless = survey("nameless.xlsx", book -> row(book, "reports", 0, Map.of("where", "x")));
    Path other =
        survey(
            "half.xlsx",
            book -> {
              row(book, "reports", 0, Map.of("report", "F-1", "where", "x"));
              row(book, "reports", 1, Map.of("where", "y"));
            });

    assertThat(job.refused("take-in", wrong))
        .matches("survey.xlsx, tab planes, cell [A-Z]+\\d+, column eave_ft: .*wide.*");
    assertThat(job.refused("take-in", nameless))
        .matches("nameless.xlsx, tab reports, cell A\\d+, column report: it is empty.*");
    assertThat(job.refused("take-in", other))
        .matches("half.xlsx, tab reports, cell A\\d+, column report: it is empty.*");
  }

  @Test
  void aFolderWithoutAJob_isRefusedWithWhatToRun() throws IOException {
    Path survey = survey(book -> row(book, "planes", 0, Map.of("plane", "A")));
    LifeFolder none = new LifeFolder(Files.createDirectory(folder.resolve("none")));

    assertThat(none.refused("take-in", survey)).contains("job.csv", "./sheathwright new ");
  }

  /** A job as the command new begins it. */
  private LifeFolder begun() {
    Path office = folder.resolve("office");
    assertThat(CommandRun.of("new", "--firm", office).status()).isZero();
    assertThat(CommandRun.of("new", office.resolve("lane"), "--rafters").status()).isZero();
    return new LifeFolder(office.resolve("lane"));
  }

  private Path survey(Consumer<XSSFWorkbook> filled) throws IOException {
    return survey("survey.xlsx", filled);
  }

  private Path survey(String name, Consumer<XSSFWorkbook> filled) throws IOException {
    Path file = folder.resolve(name);
    assertThat(CommandRun.of("intake", "-o", file).status()).isZero();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)));
        OutputStream out = Files.newOutputStream(file)) {
      filled.accept(book);
      book.write(out);
    }
    return file;
  }

  private static void key(XSSFWorkbook book, String key, String value) {
    for (Row row : book.getSheet("job")) {
      if (text(row.getCell(0)).equals(key)) {
        row.getCell(1).setCellValue(value);
      }
    }
  }

  private static void row(XSSFWorkbook book, String table, int line, Map<String, Object> cells) {
    Sheet sheet = book.getSheet(table);
    Row heads = heads(sheet);
    for (Cell head : heads) {
      Object value = cells.get(text(head));
      Cell cell = sheet.getRow(heads.getRowNum() + 1 + line).getCell(head.getColumnIndex());
      if (value instanceof Double number) {
        cell.setCellValue(number);
      } else if (value != null) {
        cell.setCellValue(value.toString());
      }
    }
  }

  private static Row heads(Sheet sheet) {
    for (Row row : sheet) {
      if (List.of("plane", "report", "mark", "material").contains(text(row.getCell(0)))) {
        return row;
      }
    }
    throw new AssertionError("no headings");
  }

  private static String text(Cell cell) {
    return cell == null ? "" : new DataFormatter().formatCellValue(cell);
  }
}
