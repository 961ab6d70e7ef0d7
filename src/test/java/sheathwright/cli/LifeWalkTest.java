package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The whole life of a small job, walked by the commands. Five sheets are bad where three are in the
 * price, six are nailed again, one joint of 24 ft is sawn open: the sums are worked by hand, at
 * $117 a sheet, $8 a sheet nailed again and $1.05 a foot.
 */
class LifeWalkTest {

  private static final Path GABLE = Path.of("demo-data", "quince-hollow");
  private static final String MARKS =
      """
      mark,plane,finding,sheet,on,joint_ft,void
      1,A,rot,A-1-2,2027-05-17,,
      2,A,rot,A-1-3,2027-05-17,,
      3,A,rot,A-1-4,2027-05-17,,
      4,A,rot,A-4-6,2027-05-17,,
      5,B,rot,B-5-3,2027-05-18,,
      6,B,loose,B-2-1,2027-05-18,,
      7,B,loose,B-2-2,2027-05-18,,
      8,B,loose,B-2-3,2027-05-18,,
      9,B,loose,B-2-4,2027-05-18,,
      10,B,loose,B-2-5,2027-05-18,,
      11,B,loose,B-2-6,2027-05-18,,
      12,A,tight,A-3-1,2027-05-18,24,
      """;

  @TempDir private static Path kept;

  private static LifeFolder issued;
  private static LifeFolder agreed;
  private static LifeFolder ordered;
  private static LifeFolder closed;

  @TempDir private Path folder;

  @BeforeAll
  static void walk() throws IOException {
    issued = issued(kept.resolve("issued"), "half");
    agreed = copy(issued, kept.resolve("agreed"));
    agreed.done("agree", "--on", "2027-05-12");
    ordered = copy(agreed, kept.resolve("ordered"));
    open(ordered);
    ordered.done("change-order", "--on", "2027-05-18");
    closed = copy(ordered, kept.resolve("closed"));
    approve(closed);
    closed.done("close", "--on", "2027-05-28");
  }

  private static LifeFolder issued(Path path, String rule) {
    LifeFolder job = LifeFolder.of(GABLE, path);
    job.write(
        "rates.csv",
        job.text("rates.csv") + "refasten_nails,19,\nrefasten_h,0.12,\nrelief_ft_h,0.0166667,\n");
    job.write(
        "stages.csv",
        """
        stage,part_pct,usd,when,paid_on,paid_usd,note
        Deposit,,1000,on signing,2027-05-12,1000,mine
        At dry-in,50,,when the roof is dry,,,
        Final,,4436.50,when the owner has looked,,,
        """);
    job.fact("bill_rule", rule);
    job.fact("crew", "3");
    job.fact("crew_hours", "8");
    job.fact("efficiency_pct", "80");
    job.done("quote", "--issue", "--on", "2027-05-04");
    return job;
  }

  private static LifeFolder copy(LifeFolder job, Path path) throws IOException {
    LifeFolder copy = LifeFolder.of(job.path(), path);
    Files.createDirectories(path.resolve("sent"));
    try (var files = Files.list(job.path().resolve("sent"))) {
      for (Path file : files.toList()) {
        Files.copy(file, path.resolve("sent").resolve(file.getFileName()));
      }
    }
    return copy;
  }

  private static void open(LifeFolder job) {
    job.fact("opened_on", "2027-05-17");
    job.write("marks.csv", MARKS);
  }

  private static void approve(LifeFolder job) {
    job.replace("orders.csv", "offered,,,", "approved,Odalys Brackenridge-Plume,signed,2027-05-18");
  }

  private LifeFolder from(LifeFolder job) throws IOException {
    return copy(job, folder.resolve("firm").resolve("job"));
  }

  /** By half, B-5-3 lies in a strip of 9-1/4 in and is half a sheet. */
  @ParameterizedTest
  @CsvSource({
    "half, 1.5, 175.50, 248.70, '$11,121.70', 4.5",
    "place, 2, 234.00, 307.20, '$11,180.20', 5",
  })
  void aJob_isWalkedFromItsQuoteToItsDeckRecord(
      String rule, String sheets, String usd, String sum, String total, String found) {
    LifeFolder job = issued(folder.resolve("firm").resolve("qh"), rule);

    assertThat(job.done("agree", "--on", "2027-05-12").out())
        .startsWith("agreed on 2027-05-12: QH-01 issue 1, $10,873.00; written: agreed.csv, job.csv")
        .contains("next: ")
        .contains("./sheathwright change-order " + job.path() + " --on DATE");
    assertThat(job.lines("job.csv")).contains("stage,agreed,", "agreed_on,2027-05-12,");

    open(job);
    CommandRun ordered = job.done("change-order", "--on", "2027-05-18");
    assertThat(ordered.out())
        .startsWith("wrote " + job.path().resolve("change-order-01.xlsx"))
        .contains(
            "Deck sheet taken out and replaced: " + sheets + " sheets at $117.00, $" + usd + "\n",
            "A sheet refastened: 6 places at $8.00, $48.00\n",
            "A tight joint sawn open: 24 ft at $1.05, $25.20\n")
        .contains("change order 01: $" + sum + "\n", "the homeowner pays " + total + " with it\n");
    assertThat(job.lines("orders.csv"))
        .containsExactly(
            "order,on,usd,days,status,approved_by,approved_how,approved_on",
            // (2 × 0.9 + 6 × 0.12 + 24/60 h) ÷ (3 × 8 × 0.8 h), up to a quarter
            "01,2027-05-18," + sum + ",0.25,offered,,,");
    assertThat(job.lines("order_lines.csv"))
        .containsExactly(
            "order,item,unit,quantity,usd,marks",
            "01,sheet,%s,%s,%s,\"4: 1, 5: %s\""
                .formatted(rule, sheets, usd, rule.equals("half") ? "0.5" : "1"),
            "01,refasten,place,6,48.00,\"6: 1, 7: 1, 8: 1, 9: 1, 10: 1, 11: 1\"",
            "01,relief,ft,24,25.20,12: 24");
    assertThat(job.lines("job.csv")).contains("stage,opened,").doesNotContain("stage,agreed,");
    assertThat(job.bytes("sent/change-order-01.xlsx")).isEqualTo(job.bytes("change-order-01.xlsx"));

    approve(job);
    job.write(
        "log.csv",
        "day,task,quantity,hours,visit\n2027-05-18,sheet,5,5.5,1\n2027-05-18,sweep,1,1,1\n");
    assertThat(job.done("close", "--on", "2027-05-28").out())
        .contains("the homeowner pays " + total + ", of which ")
        .contains(
            found + " sheets found, 3 in the price, " + sheets + " billed besides, 0 not needed")
        .contains("for the office: the work on the deck cost ")
        .contains("not compared, other tasks of the log: sweep\n");
    assertThat(job.lines("job.csv")).contains("stage,closed,", "closed_on,2027-05-28,");
    assertThat(job.lines("sent.csv"))
        .extracting(line -> line.split(",")[0])
        .containsExactly(
            "document",
            "QH-01 issue 1",
            "QH-01 change order 01",
            "QH-01 invoice",
            "QH-01 deck record");
    assertThat(job.lines("../history.csv"))
        .containsExactly(
            "job,closed_on,sheets,bad,bill_rule,seen,seen_bad,included,billed,credited,layers_on,"
                + "built_year,known_leak,fan_into_attic,covering,hours,visits,disputed",
            // 30 places on each plane, of which five are bad, whatever the bill counts
            "qh,2027-05-28,60,5,%s,18,1,3,%s,0,,,,,,6.5,1,".formatted(rule, sheets));
    for (String file : List.of("invoice.xlsx", "deck-record.xlsx")) {
      assertThat(job.bytes("sent/" + file)).isEqualTo(job.bytes(file));
    }
  }

  /** What the stages from an agreement on do not allow. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "agreed|quote|--issue|surveyed or quoted|what was agreed is not quoted anew",
        "agreed|agree||quoted|it is made once",
        "agreed|change-order||opened|when the old covering is off, write the day behind opened_on in job.csv",
        "agreed|close||opened|when the old covering is off, write the day behind opened_on in job.csv",
        "opened|quote|--issue|surveyed or quoted|what was agreed is not quoted anew",
        "opened|agree||quoted|it is made once",
        "closed|quote|--issue|surveyed or quoted|what was agreed is not quoted anew",
        "closed|agree||quoted|it is made once",
        "closed|change-order||opened|nothing is ordered after the last invoice",
        "closed|close||opened|it is written once",
      })
  void aStepOutOfTurn_isRefusedWithWhatToDo(
      String stage, String command, String option, String needed, String toDo) throws IOException {
    LifeFolder job = from(Map.of("agreed", agreed, "opened", ordered, "closed", closed).get(stage));
    Object[] day = {"--on", "2027-05-29"};
    Object[] issue = {"--issue", "--on", "2027-05-29"};
    assertThat(job.refused(command, option == null ? day : issue))
        .startsWith(job.path() + ": the job is at the stage " + stage + "; ")
        .contains(" takes " + needed + ": " + toDo);
  }

  @Test
  void agreeing_copiesWhatTheSentQuoteSays() throws IOException {
    Map<String, Double> said = named(issued.bytes("sent/QH-01-issue-1.xlsx"));
    assertThat(row(agreed, "sheet"))
        .startsWith("sheet,half,")
        .satisfies(
            row -> {
              assertThat(cell(row, 2)).isEqualTo(said.get("extra_sheet_usd"));
              assertThat(cell(row, 3)).isEqualTo(3);
              assertThat(cell(row, 4)).isEqualTo(said.get("credit_usd"));
              assertThat(cell(row, 5)).isEqualTo(3 + said.get("most_extra_sheets"));
            });
    assertThat(cell(row(agreed, "refasten"), 2)).isEqualTo(said.get("refasten_usd"));
    assertThat(cell(row(agreed, "relief"), 2)).isEqualTo(said.get("relief_usd"));
    assertThat(cell(row(agreed, "total"), 2)).isEqualTo(said.get("quote_total_usd"));
    assertThat(row(agreed, "total")).endsWith(",QH-01 issue 1");
    assertThat(row(agreed, "stage-2")).isEqualTo("stage-2,,5436.50,,,,At dry-in");
    assertThat(agreed.text("stages.csv")).isEqualTo(issued.text("stages.csv"));
  }

  /** Prices and rates change nothing any more that the owner pays. */
  @Test
  void everyPriceDoubledAfterwards_changesNothingInTheChangeOrder() throws IOException {
    LifeFolder job = from(agreed);
    String doubled =
        Pattern.compile("(?m)^(\\w+),([\\d.]+)")
            .matcher(job.text("prices.csv"))
            .replaceAll(
                (MatchResult price) ->
                    price.group(1) + "," + 2 * Double.parseDouble(price.group(2)));
    assertThat(doubled).contains("sheet,77.0");
    job.write("prices.csv", doubled);
    open(job);
    job.done("change-order", "--on", "2027-05-18");
    assertThat(job.text("orders.csv")).isEqualTo(ordered.text("orders.csv"));
    assertThat(job.text("order_lines.csv")).isEqualTo(ordered.text("order_lines.csv"));

    assertThat(job.done("quote").out())
        .contains("the quote is the one that was agreed, QH-01 issue 1, as it was sent")
        .endsWith("next: ./sheathwright change-order " + job.path() + " --on DATE\n");
    assertThat(job.bytes("quote.xlsx")).isEqualTo(issued.bytes("sent/QH-01-issue-1.xlsx"));
  }

  @Test
  void aJobWithoutPayments_isPaidWhenTheWorkIsDone() throws IOException {
    LifeFolder job = from(issued);
    Files.delete(job.path().resolve("stages.csv"));
    assertThat(job.done("agree", "--on", "2027-05-12").out())
        .contains("written: agreed.csv, job.csv, stages.csv\n")
        .contains("stages.csv was not there: it says that all is paid when the work is done\n");
    assertThat(job.lines("stages.csv"))
        .containsExactly(
            "stage,part_pct,usd,when,paid_on,paid_usd", "final,100,,when the work is done,,");
    assertThat(row(job, "stage-1")).isEqualTo("stage-1,,10873.00,,,,final");
  }

  @Test
  void agreeing_isRefusedWhereTheTablesSaySomethingElse() throws IOException {
    LifeFolder job = from(issued);
    job.replace("prices.csv", "sheet,38.50", "sheet,39.50");
    assertThat(job.refused("agree", "--on", "2027-05-12"))
        .endsWith(
            ": the tables do not say any more what QH-01 issue 1 has the owner pay and get, and its prices count;"
                + " put the tables back, or let the new ones be agreed: run ./sheathwright quote "
                + job.path()
                + " --issue --on DATE");
    job.replace("stages.csv", "4436.50", "4438.00"); // three sheets are $1 dearer each
    job.done("quote", "--issue", "--on", "2027-05-05");
    assertThat(job.refused("agree", "--on", "2027-05-12", "--document", "QH-01 issue 1"))
        .contains("the tables do not say any more what QH-01 issue 1 has the owner pay and get");
    assertThat(job.refused("agree", "--on", "2027-05-12", "--document", "QH-01 issue 3"))
        .endsWith("\"QH-01 issue 3\" was not sent; sent.csv has QH-01 issue 1, QH-01 issue 2");
    assertThat(job.done("agree", "--on", "2027-05-12").out()).contains("QH-01 issue 2");
  }

  @Test
  void agreeing_isRefusedWhereTheSentFileIsAnother_orNoneWasSent() throws IOException {
    LifeFolder job = from(issued);
    assertThat(job.refused("agree", "--on", "2027-05-03"))
        .contains("--on 2027-05-03 is before QH-01 issue 1, 2027-05-04");
    job.write("sent/QH-01-issue-1.xlsx", "another");
    assertThat(job.refused("agree", "--on", "2027-05-12"))
        .contains("is not the file that was sent as QH-01 issue 1");
    Files.delete(job.path().resolve("sent/QH-01-issue-1.xlsx"));
    assertThat(job.refused("agree", "--on", "2027-05-12")).contains("cannot be read");
    Files.delete(job.path().resolve("sent.csv"));
    assertThat(job.refused("agree", "--on", "2027-05-12"))
        .contains("no quote was issued yet, so there is nothing to agree to");
  }

  /** As if another version had sent it: the tables are the same, and a price is not. */
  @Test
  void agreeing_isRefusedWhereTheSentFileSaysAnotherPrice() throws IOException {
    LifeFolder job = from(issued);
    byte[] other;
    try (var book =
            new XSSFWorkbook(new ByteArrayInputStream(job.bytes("sent/QH-01-issue-1.xlsx")));
        var bytes = new ByteArrayOutputStream()) {
      var name = book.getName("relief_usd");
      var at = new CellReference(name.getRefersToFormula());
      book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol()).setCellValue(1.1);
      book.write(bytes);
      other = bytes.toByteArray();
    }
    String hash = job.lines("sent.csv").get(1).split(",")[2];
    Files.write(job.path().resolve("sent/QH-01-issue-1.xlsx"), other);
    job.replace("sent.csv", hash, sha256(other));
    assertThat(job.refused("agree", "--on", "2027-05-12"))
        .contains("QH-01 issue 1 says 1.1 of relief_usd, the tables make it 1.05");
  }

  /** Sisters that are sold, and such that wait for an engineer. */
  @ParameterizedTest
  @CsvSource({"mistwater-cottage, MW-01, 0", "tallow-end, TE-01, 1"})
  void aQuoteWithRafters_isAgreedToAsItWasSent(String demo, String number, int isSold) {
    LifeFolder job = LifeFolder.of(Path.of("demo-data", demo), folder.resolve("job"));
    job.done("quote", "--issue", "--on", "2027-09-01");
    assertThat(job.done("agree", "--on", "2027-09-02").out())
        .startsWith("agreed on 2027-09-02: " + number + " issue 1, ");
    assertThat(row(job, "sister").split(",", -1)[3].isEmpty()).isEqualTo(isSold == 0);
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @Test
  void aPriceThatIsAgreedLate_isAskedAbout() throws IOException {
    LifeFolder job = from(issued);
    assertThat(job.done("agree", "--on", "2027-06-04").err())
        .isEqualTo(
            "question: the price was good until 2027-06-03, and it is agreed on 2027-06-04; is that"
                + " what you mean?\n");
  }

  @Test
  void aChangeOrder_isWrittenOnce() throws IOException {
    LifeFolder job = from(ordered);
    Map<String, String> before = job.bytes();
    CommandRun again = job.done("change-order", "--on", "2027-05-19");
    assertThat(again.out())
        .startsWith(
            "nothing was found besides what is agreed and ordered: no change order is written");
    assertThat(job.bytes()).isEqualTo(before);
    assertThat(CommandRun.of("change-order", job.path(), "--force", "--on", "2027-05-19").status())
        .isEqualTo(2);
  }

  /** What was ordered for it comes back, at the price that it was ordered at. */
  @Test
  void aMarkThatIsTakenBack_makesANegativeOrder() throws IOException {
    LifeFolder job = from(ordered);
    approve(job);
    job.replace("marks.csv", "B-5-3,2027-05-18,,", "B-5-3,2027-05-18,,yes");
    assertThat(job.refused("close", "--on", "2027-05-28"))
        .contains(
            "of what was found or chosen is neither agreed nor ordered; run ./sheathwright change-order ");
    job.done("change-order", "--on", "2027-05-19");
    assertThat(job.lines("orders.csv")).element(2).asString().startsWith("02,2027-05-19,-58.50,");
    assertThat(job.lines("order_lines.csv")).contains("02,sheet,half,-0.5,-58.50,5: -0.5");
  }

  /** It is found not to be rot, but loose: half a sheet comes back, and it is nailed again. */
  @Test
  void aMarkThatLeadsToSomethingElse_isOrderedAnew() throws IOException {
    LifeFolder job = from(ordered);
    approve(job);
    job.replace("marks.csv", "5,B,rot,", "5,B,loose,");
    job.done("change-order", "--on", "2027-05-19");
    assertThat(job.lines("order_lines.csv"))
        .contains("02,sheet,half,-0.5,-58.50,5: -0.5", "02,refasten,place,1,8.00,5: 1");
    job.replace("orders.csv", "offered,,,", "approved,Odalys Brackenridge-Plume,e-mail,2027-05-19");
    assertThat(job.done("close", "--on", "2027-05-28").out())
        // 10,873 + 248.70 - 58.50 + 8
        .contains("the homeowner pays $11,071.20, ");
  }

  @Test
  void anOrdersFileThatExists_isKeptAndNothingIsWritten() throws IOException {
    LifeFolder job = from(agreed);
    open(job);
    job.write("change-order-01.xlsx", "somebody's");
    assertThat(job.refused("change-order", "--on", "2027-05-18"))
        .contains("it exists and is kept; it is never replaced: move it elsewhere first")
        .doesNotContain("--force"); // which change-order does not have
    assertThat(job.refused("change-order", "--on", "2027-05-16"))
        .contains("--on 2027-05-16 is before the day it was opened, 2027-05-17");
    job.fact("stage", "opened");
    job.fact("opened_on", "");
    assertThat(job.refused("change-order", "--on", "2027-05-18")).contains("job.csv", "opened_on");
  }

  @Test
  void aJob_isClosedOnceEveryOrderHasItsAnswer_andOnce() throws IOException {
    LifeFolder job = from(ordered);
    assertThat(job.refused("close", "--on", "2027-05-28"))
        .contains("change order 01 is still offered; write approved, refused or withdrawn");
    approve(job);
    assertThat(job.refused("close", "--on", "2027-05-17"))
        .contains("--on 2027-05-17 is before change order 01, 2027-05-18");
    job.done("close", "--on", "2027-05-28");
    Map<String, String> closed = job.bytes();
    assertThat(job.refused("close", "--on", "2027-05-28")).contains("it is written once");
    assertThat(job.bytes()).isEqualTo(closed);
    assertThat(job.lines("../history.csv")).hasSize(2);
  }

  /** Signed is one thing; that nothing needs to be signed has to be agreed. */
  @Test
  void anOrderThatNobodyAgreedBeforehand_isNotPreAgreed() throws IOException {
    LifeFolder job = from(ordered);
    job.replace("orders.csv", "offered,,,", "approved,foreman,pre-agreed,2027-05-18");
    assertThat(job.refused("close", "--on", "2027-05-28")).containsIgnoringCase("pre-agreed");
  }

  private static String row(LifeFolder job, String item) {
    return job.lines("agreed.csv").stream()
        .filter(line -> line.startsWith(item + ","))
        .findFirst()
        .orElseThrow();
  }

  private static double cell(String row, int place) {
    return Double.parseDouble(row.split(",")[place]);
  }

  /** The numbers of a workbook's named cells. */
  private static Map<String, Double> named(byte[] workbook) throws IOException {
    Map<String, Double> all = new LinkedHashMap<>();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      for (var name : book.getAllNames()) {
        var area = new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
        if (area.isSingleCell() && area.getFirstCell().getCol() >= 0) {
          CellReference at = area.getFirstCell();
          var cell = book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
          if (!cell.getCellType().name().equals("STRING")) {
            all.put(name.getNameName(), numeric(cell));
          }
        }
      }
    }
    return all;
  }

  private static Double numeric(org.apache.poi.xssf.usermodel.XSSFCell cell) {
    try {
      return cell.getNumericCellValue();
    } catch (IllegalStateException aText) {
      return null;
    }
  }
}
