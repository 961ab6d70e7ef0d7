package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.life.found.SheetsSettled;
import sheathwright.life.record.HeldTables;
import sheathwright.life.record.JobWorkbook;
import sheathwright.life.record.Revision;
import sheathwright.life.record.Revisions;
import sheathwright.workbook.book.Cells;

/** The estimate as the way back: whoever changes it in a spreadsheet program has it quoted anew. */
class EstimateBackTest {

  private static final String UNSAID = "uplift_tie_known";

  @TempDir private Path folder;

  static List<String> jobs() {
    return Samples.JOBS;
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void anUntouchedEstimate_givesTheSameTotalAndTheSameTables(String name) throws IOException {
    Job job = Job.of(Samples.tables(name));
    Estimate estimate = new Estimate(job);
    Path file = folder.resolve("estimate.xlsx");
    Files.write(file, JobBook.estimate(estimate).bytes());

    JobWorkbook back = JobWorkbook.in(file);

    assertThat(back.estimate().total().value()).isEqualTo(estimate.total().value());
    assertThat(back.estimate().quote().worstCase().value())
        .isEqualTo(estimate.quote().worstCase().value());
    assertThat(cells(HeldTables.of(back.estimate().job()))).isEqualTo(cells(HeldTables.of(job)));
    assertThat(back.revisions().newest().changes()).containsExactly("nothing in the tables");
  }

  /** Tables by name, each its headings over its lines; notes are among them. */
  private static Map<String, List<List<String>>> cells(Map<String, RowSource> tables) {
    return tables.entrySet().stream()
        .collect(
            java.util.stream.Collectors.toMap(
                Map.Entry::getKey,
                table ->
                    Stream.concat(
                            Stream.of(table.getValue().header()),
                            table.getValue().lines().stream().map(RowSource.Line::cells))
                        .map(List::copyOf)
                        .toList()));
  }

  @Test
  void aChangedInput_isFollowedAndToldInTheHistory() throws IOException {
    Path file = estimate("quince-hollow", book -> cell(book, "prices", "sheet").setCellValue(50));
    JobWorkbook back = JobWorkbook.in(file);
    Estimate same = new Estimate(Job.of(Samples.tables("quince-hollow")));

    Revision newest = back.revisions().newest();

    assertThat(newest.number()).isEqualTo(2);
    assertThat(newest.changes()).containsExactly("prices, sheet: 38.5 → 50");
    assertThat(back.estimate().total().value()).isGreaterThan(same.total().value());
    assertThat(back.revisions().all().get(0).total()).isEqualTo(same.total().value());
  }

  @Test
  void theThirdIssue_tellsOfTheSecond() throws IOException {
    Path file = estimate("quince-hollow", book -> cell(book, "prices", "sheet").setCellValue(50));
    JobWorkbook second = JobWorkbook.in(file);
    Files.write(
        file,
        JobBook.estimate(second.estimate(), SheetsSettled.of(second.estimate()), second.revisions())
            .bytes());
    changed(file, book -> cell(book, "job", "valid_days").setCellValue(45));

    Revisions third = JobWorkbook.in(file).revisions();

    assertThat(third.all()).extracting(Revision::number).containsExactly(1, 2, 3);
    assertThat(third.all().get(1).changes()).containsExactly("prices, sheet: 38.5 → 50");
    assertThat(third.newest().changes()).containsExactly("job, valid_days: 30 → 45");
  }

  @Test
  void whatNobodyHasSaidYet_isReadOnceSomebodySaysIt() throws IOException {
    Job job = Job.of(Samples.tables("cinder-brook"));
    Map<String, sheathwright.figure.Traced> unsaid = new Estimate(job).loadPath().unsaid();
    assertThat(unsaid.values()).extracting(sheathwright.figure.Traced::name).contains(UNSAID);
    Path file =
        estimate("cinder-brook", book -> cell(book, "job", UNSAID).setCellValue("measured"));

    assertThat(JobWorkbook.in(file).revisions().newest().changes())
        .containsExactly("job, " + UNSAID + ": new (" + UNSAID + ", measured)");
  }

  @Test
  void aLineAdded_isReadAndTold() throws IOException {
    Path file =
        estimate(
            "cinder-brook",
            book -> {
              Row last = book.getSheet("marks").getRow(row(book, "marks", "porch-2") + 1);
              List<Object> cells = List.of("porch-3", "porch", "rot", 60.0, 4.0, 12.0, 12.0);
              for (int i = 0; i < cells.size(); i++) {
                if (cells.get(i) instanceof Double number) {
                  last.getCell(i).setCellValue(number);
                } else {
                  last.getCell(i).setCellValue(cells.get(i).toString());
                }
              }
            });

    assertThat(JobWorkbook.in(file).revisions().newest().changes())
        .singleElement()
        .asString()
        .startsWith("marks, porch-3: new (porch-3, porch, rot, 60, 4, 12, 12");
  }

  @Test
  void aValueThatIsNotAllowed_isSaidWithTabAndCell() throws IOException {
    Path file =
        estimate("quince-hollow", book -> cell(book, "rates", "margin_pct").setCellValue(120));
    String cell;
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(file))) {
      cell = cell(book, "rates", "margin_pct").getAddress().formatAsString();
    }

    assertThatThrownBy(() -> JobWorkbook.in(file))
        .isInstanceOfSatisfying(
            ProblemsException.class,
            refused ->
                assertThat(refused.problems())
                    .singleElement()
                    .asString()
                    .startsWith("estimate.xlsx, tab rates, cell " + cell + ", column value: ")
                    .contains("120", "from 0 to 90"));
  }

  @Test
  void aFormulaTypedIntoAnInput_isReadByItsValueAndSaidOnce() throws IOException {
    Path file =
        estimate(
            "quince-hollow",
            book -> {
              cell(book, "prices", "sheet").setCellFormula("36+2.5");
              book.getCreationHelper()
                  .createFormulaEvaluator()
                  .evaluateFormulaCell(cell(book, "prices", "sheet"));
            });
    JobWorkbook back = JobWorkbook.in(file);

    assertThat(back.revisions().newest().changes()).containsExactly("nothing in the tables");
    assertThat(back.estimate().job().questions())
        .filteredOn(question -> question.toString().contains("formula"))
        .singleElement()
        .asString()
        .contains("tab prices");
  }

  @Test
  void aMissingTab_isSaidByItsName() throws IOException {
    Path file = estimate("quince-hollow", book -> book.removeSheetAt(book.getSheetIndex("planes")));

    assertThatThrownBy(() -> JobWorkbook.in(file))
        .hasMessageContaining("the tab planes is missing");
  }

  @Test
  void everyInputOfATable_hasALineOfHelp() throws IOException {
    try (XSSFWorkbook book =
        Cells.opened(
            JobBook.estimate(new Estimate(Job.of(Samples.tables("cinder-brook")))).bytes())) {
      for (String tab : TableBook.in(estimate("cinder-brook", same -> {})).tabs()) {
        if (!Samples.tables("cinder-brook").files().containsKey(tab)) {
          continue;
        }
        List<String> headings = Samples.tables("cinder-brook").files().get(tab).header();
        for (int column = 0; column < headings.size(); column++) {
          boolean isAsked = !headings.get(column).startsWith("note") && column > 0;
          int at = column;
          assertThat(
                  !isAsked
                      || book.getSheet(tab).getDataValidations().stream()
                          .anyMatch(
                              held ->
                                  Stream.of(held.getRegions().getCellRangeAddresses())
                                          .anyMatch(range -> range.isInRange(3 + 1, at))
                                      && !held.getPromptBoxText().isBlank()))
              .as(tab + " " + headings.get(column))
              .isTrue();
        }
      }
    }
  }

  private Path estimate(String name, Consumer<XSSFWorkbook> change) throws IOException {
    Path file = folder.resolve("estimate.xlsx");
    Estimate estimate = new Estimate(Job.of(Samples.tables(name)));
    Files.write(file, JobBook.estimate(estimate).bytes());
    changed(file, change);
    return file;
  }

  private static void changed(Path file, Consumer<XSSFWorkbook> change) throws IOException {
    try (XSSFWorkbook book = Cells.opened(Files.readAllBytes(file));
        OutputStream out = Files.newOutputStream(file)) {
      change.accept(book);
      book.write(out);
    }
  }

  /** The value's cell of a key. */
  private static Cell cell(XSSFWorkbook book, String tab, String key) {
    return book.getSheet(tab).getRow(row(book, tab, key)).getCell(1);
  }

  private static int row(XSSFWorkbook book, String tab, String first) {
    for (Row row : book.getSheet(tab)) {
      Cell cell = row.getCell(0);
      if (cell != null && cell.toString().equals(first)) {
        return row.getRowNum();
      }
    }
    throw new AssertionError(tab + " has no " + first);
  }
}
