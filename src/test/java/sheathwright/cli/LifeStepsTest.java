package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each step of a job's life in its turn and out of it. */
class LifeStepsTest {

  private static final Path GABLE = Path.of("demo-data", "quince-hollow");
  private static final String[] ISSUE = {"--issue", "--on", "2027-05-04"};

  @TempDir private Path folder;

  private LifeFolder job() {
    return LifeFolder.of(GABLE, folder.resolve("job"));
  }

  /** What the stages before an agreement do not allow; the others are walked to. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "asked|quote||surveyed or quoted|when it is measured, write surveyed behind stage in job.csv",
        "asked|quote|--issue|surveyed or quoted|when it is measured, write surveyed behind stage in job.csv",
        "asked|agree||quoted|when it is measured, write surveyed behind stage in job.csv",
        "surveyed|agree||quoted|run ./sheathwright quote JOB --issue --on DATE",
        "surveyed|change-order||opened|run ./sheathwright quote JOB --issue --on DATE",
        "quoted|change-order||opened|run ./sheathwright agree JOB --on DATE",
        "quoted|close||opened|run ./sheathwright agree JOB --on DATE",
      })
  void aStepOutOfTurn_isRefusedWithWhatToDo(
      String stage, String command, String option, String needed, String toDo) {
    LifeFolder job = job();
    job.fact("stage", stage);
    boolean isDraft = command.equals("quote") && option == null;
    Object[] options =
        isDraft ? new Object[0] : option == null ? new Object[] {"--on", "2027-05-04"} : ISSUE;
    assertThat(job.refused(command, options))
        .startsWith(job.path() + ": the job is at the stage " + stage + "; ")
        .contains(" takes " + needed + ": " + toDo.replace("JOB", job.path().toString()));
  }

  /** Of a closed job nothing but its invoice and its record were to be written. */
  @Test
  void nothingGoesOntoTheRoofOfAClosedJob_norComesBackFromIt() {
    LifeFolder closed =
        LifeFolder.of(Path.of("demo-data", "whole-life", "6-closed"), folder.resolve("closed"));
    LifeFolder opened =
        LifeFolder.of(Path.of("demo-data", "whole-life", "5-opened"), folder.resolve("opened"));
    Path crew = folder.resolve("crew.xlsx");
    opened.done("crew", "-o", crew);
    assertThat(closed.refused("crew", "-o", folder.resolve("late.xlsx")))
        .contains("the job is at the stage closed; a crew's workbook takes surveyed or quoted");
    assertThat(closed.refused("take-in", crew))
        .contains("the job is at the stage closed; what comes back from the roof takes asked or");
  }

  @ParameterizedTest
  @ValueSource(strings = {"agree", "change-order", "close"})
  void aStepWithoutItsDay_isWrongUse(String command) {
    CommandRun ran = job().run(command);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).startsWith("Missing required option: '--on=DATE'");
  }

  @Test
  void anIssueWithoutItsDay_orADayWithoutAnIssue_isWrongUse() {
    LifeFolder job = job();
    assertThat(job.run("quote", "--issue").status()).isEqualTo(2);
    CommandRun ran = CommandRun.of("quote", GABLE, "--on", "2027-05-04");
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err())
        .startsWith("Error: Missing required argument(s): --issue")
        .contains("[--on=DATE --issue]");
    assertThat(CommandRun.of("agree", GABLE, "--on", "10/4/2027").err())
        .startsWith(
            "Invalid value for option '--on': \"10/4/2027\" could be one day or another; write 2027-10-04 or 2027-04-10");
    assertThat(CommandRun.of("agree", GABLE, "--on", "10/4/2027 2:30 pm").err())
        .contains("write 2027-10-04 or 2027-04-10");
    assertThat(job.run("agree", "--on", "10/14/2027").err()).doesNotContain("Invalid value");
    assertThat(CommandRun.of("agree", GABLE, "--on", "soon").err())
        .startsWith("Invalid value for option '--on': \"soon\" is not a date of this century");
  }

  @ParameterizedTest
  @ValueSource(strings = {"quote", "agree", "change-order", "close"})
  void theHelpOfAStep_hasExamples(String command) {
    assertThat(CommandRun.of(command, "--help").out())
        .contains("Examples:")
        .contains("  sheathwright " + command + " ");
  }

  @Test
  void aQuote_isADraftUntilItIsIssued() throws IOException {
    LifeFolder job = job();
    CommandRun drafted = job.done("quote");
    assertThat(drafted.out())
        .endsWith("next: ./sheathwright quote " + job.path() + " --issue --on DATE\n");
    assertThat(firstPage(job.bytes("quote.xlsx"))).contains("draft of quote QH-01");

    CommandRun issued = job.done("quote", (Object[]) ISSUE);
    assertThat(issued.out())
        .startsWith("issued QH-01 issue 1, kept as " + job.path().resolve("sent"))
        .endsWith("next: ./sheathwright agree " + job.path() + " --on DATE\n");
    assertThat(firstPage(job.bytes("sent/QH-01-issue-1.xlsx")))
        .contains("quote QH-01 issue 1")
        .doesNotContain("draft");
    assertThat(job.path().resolve("sent/QH-01-issue-1-estimate.xlsx")).isNotEmptyFile();
    assertThat(job.lines("sent.csv"))
        .satisfiesExactly(
            head ->
                assertThat(head)
                    .isEqualTo(
                        "document,file,file_sha256,record_sha256,total_usd,on,manifest_sha256"),
            row ->
                assertThat(row)
                    // 10,420 + 165 + 3 × 96
                    .matches(
                        "QH-01 issue 1,QH-01-issue-1\\.xlsx,[0-9a-f]{64},[0-9a-f]{64},10873\\.00,2027-05-04,[0-9a-f]{64}"));
  }

  @Test
  void issuing_setsTheStageIfTheJobIsEarlier_andTheDateOfTheQuote() {
    LifeFolder job = job();
    job.fact("stage", "surveyed");
    job.done("quote", "--issue", "--on", "May 10, 2027");
    assertThat(job.lines("job.csv"))
        .contains("stage,quoted,", "quote_date,2027-05-10,invented")
        .doesNotContain("stage,surveyed,");
  }

  @Test
  void theSameQuote_isNotIssuedTwice_andAnotherGetsTheNextNumber() {
    LifeFolder job = job();
    job.done("quote", (Object[]) ISSUE);
    assertThat(job.refused("quote", (Object[]) ISSUE))
        .contains(
            "nothing that the owner pays or gets has changed since QH-01 issue 1, which is kept as ");
    assertThat(job.refused("quote", "--issue", "--on", "2027-05-03"))
        .contains("--on 2027-05-03 is before QH-01 issue 1, 2027-05-04");
    job.replace("job.csv", "permit_usd,165.00", "permit_usd,175.00");
    assertThat(job.done("quote", (Object[]) ISSUE).out()).startsWith("issued QH-01 issue 2");
    assertThat(job.lines("sent.csv")).hasSize(3);
  }

  @Test
  void aQuoteNumberThatNamesNoDocument_isRefused() {
    LifeFolder job = job();
    job.replace("job.csv", "quote_number,QH-01", "quote_number," + "Q".repeat(41));
    assertThat(job.refused("quote", (Object[]) ISSUE))
        .contains(
            "quote_number has 41 characters; what names documents and their files takes at most 40");
    job.replace("job.csv", "Q".repeat(41), "../№ 7/2027 " + "Q".repeat(28));
    job.done("quote", (Object[]) ISSUE);
    assertThat(job.path().resolve("sent/7-2027-" + "Q".repeat(28) + "-issue-1.xlsx"))
        .isNotEmptyFile();
  }

  @Test
  void theSameTablesAndDay_giveTheSameBytes() {
    LifeFolder one = job();
    LifeFolder other = LifeFolder.of(GABLE, folder.resolve("other"));
    one.done("quote", (Object[]) ISSUE);
    other.done("quote", (Object[]) ISSUE);
    assertThat(one.bytes()).isEqualTo(other.bytes());
  }

  /** What stands where a file goes lets none of the others be written. */
  @Test
  void aStepThatCannotWriteOneFile_writesNone() throws IOException {
    LifeFolder job = job();
    Files.createDirectories(job.path().resolve("sent/QH-01-issue-1-estimate.xlsx"));
    assertThat(job.refused("quote", (Object[]) ISSUE))
        .contains("it is a folder; name a file in it");
    LifeFolder other = LifeFolder.of(GABLE, folder.resolve("other"));
    other.write("sent", "no folder");
    assertThat(other.refused("quote", (Object[]) ISSUE)).contains("sent");
    Path copies = Files.createDirectory(folder.resolve("copies"));
    Files.writeString(copies.resolve("quote.xlsx"), "mine");
    LifeFolder third = LifeFolder.of(GABLE, folder.resolve("third"));
    assertThat(third.refused("quote", "--issue", "--on", "2027-05-04", "-o", copies))
        .contains("it exists and is kept");
    assertThat(third.path().resolve("sent")).doesNotExist();
  }

  @Test
  void aQuoteThatWasSentButStandsInNoTable_isNotReplacedEvenByForce() throws IOException {
    LifeFolder job = job();
    Path sent = Files.createDirectory(job.path().resolve("sent")).resolve("QH-01-issue-1.xlsx");
    Files.writeString(sent, "sent");
    assertThat(job.refused("quote", "--issue", "--on", "2027-05-04", "--force"))
        .contains("it exists and is kept; what was sent is never replaced: put back the sent.csv")
        .doesNotContain("add --force");
    assertThat(sent).hasContent("sent");
  }

  static String firstPage(byte[] workbook) throws IOException {
    DataFormatter shown = new DataFormatter();
    StringBuilder all = new StringBuilder();
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      book.getSheetAt(0)
          .forEach(
              row -> row.forEach(cell -> all.append(shown.formatCellValue(cell)).append('\n')));
    }
    return all.toString();
  }
}
