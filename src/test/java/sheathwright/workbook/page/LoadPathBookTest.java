package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Check;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.path.PathFields;
import sheathwright.workbook.book.Cells;

/**
 * The joints of a roof down to its walls: what nobody looked at is not sound, and what somebody
 * types into the workbook later is checked there.
 */
class LoadPathBookTest {

  /** 28 ft wide, rafters 16 in apart on 6 in 12, all measured, in a town at 115 mph. */
  private static final String SITE =
      "wind_mph,115,\nexposure,b,\nenclosed_known,measured,\nsnow_ground_psf,15,\n";

  private static final String HEEL = "Nails where rafters and ceiling joists meet";
  private static final String TIES = "Ties of rafters to the wall, in the wind";

  private static final String RIDGE = "Ridge board, which needs a slope of its own";
  private static final String STRUTS = "Struts that stand on no bearing wall";

  @TempDir Path folder;

  /**
   * The demo job, which measured its rafters, with these facts in place of its own of the joints.
   */
  private Estimate estimate(String facts) throws IOException {
    Path job = Files.createTempDirectory(folder, "job");
    copy(job);
    Path said = job.resolve("job.csv");
    List<String> keys =
        Stream.of(PathFields.PATH, PathFields.HELD_BY)
            .flatMap(List::stream)
            .map(field -> field.name() + ",")
            .collect(Collectors.toCollection(ArrayList::new));
    facts.lines().map(line -> line.split(",")[0] + ",").forEach(keys::add);
    List<String> kept =
        Files.readAllLines(said).stream()
            .filter(line -> keys.stream().noneMatch(line::startsWith))
            .toList();
    Files.writeString(said, String.join("\n", kept) + "\n" + facts);
    return new Estimate(Job.in(job));
  }

  private static void copy(Path job) throws IOException {
    try (Stream<Path> tables = Files.list(Path.of("demo-data", "quince-hollow"))) {
      for (Path table : tables.filter(file -> file.toString().endsWith(".csv")).toList()) {
        Files.copy(table, job.resolve(table.getFileName()));
      }
    }
  }

  private static Check.Outcome outcome(Estimate estimate, String what) {
    return estimate.loadPath().checks().stream()
        .filter(check -> check.what().equalsIgnoreCase(what))
        .findFirst()
        .orElseThrow()
        .outcome();
  }

  @Test
  void ofAJobThatSaysNothing_noJointIsSound() throws IOException {
    for (String facts : new String[] {"rise_in_12,,\n", SITE}) {
      assertThat(estimate(facts).loadPath().checks())
          .allSatisfy(check -> assertThat(check.outcome()).isInstanceOf(Check.NotLooked.class));
    }
  }

  /** What each demo job's tables show of its joints, and nothing more. */
  @ParameterizedTest
  @CsvSource({
    "quince-hollow, Holds, NotLooked, Holds, NotLooked, Holds",
    "cinder-brook, NotLooked, NotLooked, NotLooked, NotLooked, NotLooked",
    "tallow-end, NotLooked, NotLooked, NotLooked, NotLooked, NotLooked",
    "mistwater-cottage, NotLooked, NotLooked, NotLooked, NotLooked, NotLooked"
  })
  void noDemoJob_saysMoreThanItsTablesShow(
      String job, String ridge, String struts, String heel, String ties, String eave) {
    assertThat(
            new Estimate(Job.in(Path.of("demo-data", job)))
                .loadPath().checks().stream()
                    .map(check -> check.outcome().getClass().getSimpleName()))
        .containsExactly(ridge, struts, heel, ties, eave);
  }

  /**
   * By hand: IRC Table R802.5.2 prints 6 nails for 5 in 12 (6 is not printed), 16 in, 28 ft and up
   * to 20 psf; the thrust of 560 lb over some 130 lb a nail asks for 5. Table R802.11 prints 117 lb
   * from 5 in 12.
   */
  @ParameterizedTest
  @CsvSource({
    "16d-common, 6, measured, Holds",
    "16d-common, 5, measured, Fails",
    "16d-common, 6, told, Holds",
    "16d-common, 6, assumed, NotLooked",
    "16d-common, 6, unknown, NotLooked",
    "16d-common, 0, measured, Fails",
    "6d-common, 40, measured, Fails"
  })
  void heelJoints_holdOrFailOnceSomebodyLooked(String nail, int nails, String known, String outcome)
      throws IOException {
    String facts =
        SITE
            + "heel_nail,%s,\nheel_nails,%d,\nheel_nails_known,%s,\n".formatted(nail, nails, known);
    assertThat(outcome(estimate(facts), HEEL).getClass().getSimpleName()).isEqualTo(outcome);
  }

  @ParameterizedTest
  @CsvSource({
    "117, measured, 12, measured, Holds",
    "116, measured, 12, measured, Fails",
    "0, measured, 12, measured, Fails",
    "500, assumed, 12, measured, NotLooked",
    "500, measured, 12, unknown, NotLooked",
    "500, measured, 25, measured, NotLooked"
  })
  void ties_holdOrFailOnceSomebodyLooked(
      int tie, String known, int overhang, String overhangKnown, String outcome)
      throws IOException {
    String facts =
        SITE
            + "uplift_tie_lb,%d,\nuplift_tie_known,%s,\noverhang_in,%d,\noverhang_known,%s,\n"
                .formatted(tie, known, overhang, overhangKnown);
    assertThat(outcome(estimate(facts), TIES).getClass().getSimpleName()).isEqualTo(outcome);
  }

  /** IRC R802.4.4: from 3 in 12 a board will do; what a beam carries is not checked here. */
  @ParameterizedTest
  @CsvSource({
    "board, 6, Holds",
    "board, 3, Holds",
    "board, 2.5, Fails",
    "unknown, 6, NotLooked",
    "beam, 6, NotLooked"
  })
  void aRidgeBoard_needsItsSlope(String ridge, String rise, String outcome) throws IOException {
    assertThat(
            outcome(estimate("rise_in_12," + rise + ",\nridge," + ridge + ",\n"), RIDGE)
                .getClass()
                .getSimpleName())
        .isEqualTo(outcome);
  }

  /** A footnote of Table R802.5.2, from memory: a bearing ridge needs no heel joints. */
  @Test
  void aRidgeBeam_leavesNoThrust() throws IOException {
    assertThat(outcome(estimate(SITE + "ridge,beam,\n"), HEEL)).isInstanceOf(Check.Holds.class);
    assertThat(outcome(estimate(SITE + "ridge,board,\n"), HEEL))
        .isInstanceOf(Check.NotLooked.class);
  }

  @ParameterizedTest
  @CsvSource({"7, yes, Holds", "7, no, Fails", "7, unknown, NotLooked", "0, no, Holds"})
  void struts_standOnBearingWalls(int at, String wall, String outcome) throws IOException {
    String facts = "strut_ft,%d,\nstrut_on_bearing_wall,%s,\n".formatted(at, wall);
    assertThat(outcome(estimate(facts), STRUTS).getClass().getSimpleName()).isEqualTo(outcome);
  }

  /** Beyond the table's ends the job is not refused: it says that nobody can say. */
  @ParameterizedTest
  @CsvSource({"150, b", "115, c", "120, d"})
  void whereTheTableEnds_tiesAreNotLookedAt(int wind, String exposure) throws IOException {
    String facts =
        "wind_mph,%d,\nexposure,%s,\nuplift_tie_lb,900,\nuplift_tie_known,measured,\noverhang_in,12,\noverhang_known,measured,\n"
            .formatted(wind, exposure);
    Estimate estimate = estimate(facts);
    assertThat(outcome(estimate, TIES)).isInstanceOf(Check.NotLooked.class);
    assertThat(JobBook.estimate(estimate).bytes()).isNotEmpty();
  }

  /** The workbook of a job that says nothing, filled in later by hand, in a foreign engine. */
  @Test
  void whatIsTypedLater_isCheckedInTheWorkbook() throws IOException {
    byte[] file = JobBook.estimate(estimate(SITE)).bytes();
    try (XSSFWorkbook book = Cells.opened(file)) {
      assertThat(verdict(book, HEEL)).isEqualTo("not looked at");
      assertThat(verdict(book, TIES)).isEqualTo("not looked at");
      double unmade = number(book, "checks_not_looked_at");
      typed(book, Map.of("heel_nail", "16d-common", "heel_nails", 6, "heel_nails_known", "told"));
      assertThat(verdict(book, HEEL)).isEqualTo("holds");
      assertThat(number(book, "checks_not_looked_at")).isEqualTo(unmade - 1);
      assertThat(number(book, "checks_failing")).isZero();
      typed(book, Map.of("heel_nails", 5));
      assertThat(verdict(book, HEEL)).isEqualTo("falls short");
      assertThat(number(book, "checks_failing")).isEqualTo(1);
      typed(
          book,
          Map.of(
              "uplift_tie_lb", 117,
              "uplift_tie_known", "stamped",
              "overhang_known", "measured"));
      assertThat(verdict(book, TIES)).isEqualTo("holds");
      typed(book, Map.of("wind_mph", 120));
      assertThat(verdict(book, TIES)).as("more at 120 mph").isEqualTo("falls short");
      typed(book, Map.of("ridge", "board"));
      assertThat(verdict(book, RIDGE)).isEqualTo("holds");
      typed(book, Map.of("ridge", "beam"));
      assertThat(verdict(book, HEEL)).as("five nails are no less than none").isEqualTo("holds");
      typed(book, Map.of("exposure", "c"));
      assertThat(verdict(book, TIES)).isEqualTo("not looked at");
    }
  }

  /** Ten nails are no use where nobody knows how far the rafters span. */
  @Test
  void jointsOfRaftersThatNobodyKnows_areNotLookedAt() throws IOException {
    String seen =
        SITE
            + "heel_nail,16d-common,\nheel_nails,10,\nheel_nails_known,measured,\n"
            + "uplift_tie_lb,500,\nuplift_tie_known,measured,\noverhang_in,12,\noverhang_known,measured,\n";
    Estimate estimate = estimate("span_known,unknown,\n" + seen);
    assertThat(outcome(estimate, HEEL)).isInstanceOf(Check.NotLooked.class);
    assertThat(outcome(estimate, TIES)).isInstanceOf(Check.NotLooked.class);
    assertThat(estimate.checksNotLookedAt().value())
        .as("ten of the rafters, two joints, and what the site does not say")
        .isGreaterThanOrEqualTo(12);
  }

  @Test
  void theSelfCheck_doesNotCallAllOfItHolding() throws IOException {
    try (XSSFWorkbook book = Cells.opened(JobBook.estimate(estimate(SITE)).bytes())) {
      assertThat(at(book, "self_check_state").getStringCellValue())
          .isEqualTo("Self-check: every check that was made holds");
      assertThat(number(book, "checks_not_looked_at")).isPositive();
    }
  }

  private static void typed(XSSFWorkbook book, Map<String, Object> values) {
    values.forEach(
        (name, value) -> {
          if (value instanceof Integer number) {
            at(book, name).setCellValue(number);
          } else {
            at(book, name).setCellValue((String) value);
          }
        });
  }

  private static double number(XSSFWorkbook book, String name) {
    return evaluator(book).evaluate(at(book, name)).getNumberValue();
  }

  private static String verdict(XSSFWorkbook book, String what) {
    for (Row row : book.getSheet("Proof")) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(what)) {
        return evaluator(book).evaluate(row.getCell(5)).getStringValue();
      }
    }
    throw new AssertionError(what + " is not on Proof");
  }

  private static FormulaEvaluator evaluator(XSSFWorkbook book) {
    return book.getCreationHelper().createFormulaEvaluator();
  }

  private static Cell at(XSSFWorkbook book, String name) {
    CellReference where = new CellReference(book.getName(name).getRefersToFormula());
    return book.getSheet(where.getSheetName()).getRow(where.getRow()).getCell(where.getCol());
  }
}
