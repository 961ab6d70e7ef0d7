package sheathwright.job.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.table.JobText;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** Many jobs in one set of tables, or a folder each. */
class SeasonTest {

  @TempDir private Path folder;

  @Test
  void everyJob_isReadAsIfItWereAlone() throws IOException {
    Season season = Season.in(SeasonText.two().in(folder));

    assertThat(season.jobs()).extracting(SeasonJob::name).containsExactly("Ash", "Oak");
    Job ash = season.jobs().get(0).job();
    Job oak = season.jobs().get(1).job();
    assertThat(ash.fact(JobFields.CUSTOMER).value()).isEqualTo("Nobody at all");
    assertThat(ash.lines(JobTable.PLANES)).hasSize(2);
    assertThat(ash.lines(JobTable.MARKS)).isEmpty();
    assertThat(oak.fact(JobFields.QUOTE_DATE).value()).isEqualTo("2027-05-05");
    assertThat(oak.knows(JobFields.LOOKED_AT)).isFalse();
    assertThat(oak.lines(JobTable.PLANES)).hasSize(1);
    assertThat(oak.lines(JobTable.MARKS)).hasSize(1);
  }

  @Test
  void thePrice_isThatOfTheSameJobInItsOwnFolder() throws IOException {
    Season season = Season.in(SeasonText.two().in(folder));
    JobText alone = JobText.small().with("job", "not_looked_at,the rest,\n", "");

    assertThat(new Estimate(season.jobs().get(0).job()).total().plain())
        .isEqualTo(new Estimate(alone.job()).total().plain());
  }

  @Test
  void whatTheOfficeSaysForOneJob_standsInsteadForIt() throws IOException {
    Season season = Season.in(SeasonText.two().in(folder));

    assertThat(prices(season)).containsExactly("40", "55");
  }

  private static List<String> prices(Season season) {
    return season.ofEach(SeasonJob::job).stream()
        .map(job -> job.labeledPrices().get("Sheet").plain())
        .toList();
  }

  @Test
  void inputs_nameTheSeasonsFileLineAndColumn() throws IOException {
    Job oak = Season.in(SeasonText.two().in(folder)).jobs().get(1).job();

    assertThat(oak.fact(JobFields.QUOTE_DATE).source().cell().orElseThrow().inWords())
        .isEqualTo("jobs.csv, line 3");
    assertThat(oak.fact(JobFields.QUOTE_DATE).source().cell().orElseThrow().column())
        .isEqualTo("quote_date");
    assertThat(oak.lines(JobTable.PLANES).get(0).line().number()).isEqualTo(4);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "jobs.csv|Oak,Another|Ash,Another|jobs.csv, line 3, column job: \"Ash\" appears twice; give each job one line",
        "jobs.csv|Oak,Another|ash,Another|jobs.csv, line 3, column job: \"ash\" appears twice; give each job one line",
        "jobs.csv|Oak,Another|,Another|jobs.csv, line 3, column job: job is missing; ",
        "jobs.csv|Oak,Another|Oak/2,Another|jobs.csv, line 3, column job: \"Oak/2\" is given, but the job's workbooks go into a folder of that name, which has none of / \\ : * ? \" < > | and no dot at its end; try Oak-2",
        "jobs.csv|Oak,Another|..,Another|jobs.csv, line 3, column job: \"..\" is given, but the job's workbooks go into a folder of that name, which has none of / \\ : * ? \" < > | and no dot at its end; try job-1",
        "planes.csv|plane,job|job,job|planes.csv, line 1, column job: this column appears twice",
        "jobs.csv|planned_sheets|planed_sheets|jobs.csv, line 1, column planed_sheets: this column is not known; did you mean planned_sheets?",
        "jobs.csv|job,job_name|jab,job_name|jobs.csv, line 1, column jab: this column is not known; did you mean job?",
        "jobs.csv|2027-05-05|soon|jobs.csv, line 3, column quote_date: \"soon\" is not a date",
        "jobs.csv|,3,50,24|,,50,24|jobs.csv, line 3: planned_sheets is missing: Deck sheets in the price",
        "jobs.csv|,3,50,24|,3.5,50,24|jobs.csv, line 3, column planned_sheets: planned_sheets is 3.5",
        "planes.csv|front,Oak|front,Oakk|planes.csv, line 4, column job: \"Oakk\" is not a job of jobs.csv (did you mean Oak?); it has Ash, Oak",
        "planes.csv|front,Oak|front,|planes.csv, line 4, column job: it is empty; give the job whose line this is, as jobs.csv calls it; it has Ash, Oak",
        "planes.csv|front,Oak|front,Ash|planes.csv: no line is of the job \"Oak\" (jobs.csv, line 3); every job has planes",
        "planes.csv|plane,job|plane,note|planes.csv, line 1, column job: this column is missing: it says whose each line is; the file has plane, note, ",
        "planes.csv|30,14|30,x|planes.csv, line 4, column slope_length_ft: ",
        "planes.csv|slope_length_ft|slope_lenght_ft|planes.csv, line 1, column slope_lenght_ft: this column is not known",
        "prices.csv|55,Oak|55,Elm|prices.csv, line 4, column job: \"Elm\" is not a job of jobs.csv; it has Ash, Oak",
        "prices.csv|sheet,55,Oak|sheat,55,Oak|prices.csv, line 4, column item: \"sheat\" is not known; did you mean sheet?",
        "prices.csv|sheet,40,,|sheet,40,Oak,|prices.csv: job Ash: sheet is missing: Sheet",
        "prices.csv|nail,0.02,,|nail,0.02,,¶sheet,50,Oak,|prices.csv, line 5, column item: \"sheet\" appears twice",
        "marks.csv|front-1-1|front-9-1|marks.csv, line 2, column sheet: ",
      })
  void whatCannotBe_isSaidWhereItStandsInTheSeason(
      String file, String text, String spoiled, String said) throws IOException {
    SeasonText.two().with(file, text, spoiled.replace("¶", "\n")).in(folder);

    assertThat(problems()).first().asString().startsWith(said);
  }

  @Test
  void aTableNobodyReads_isSaid() throws IOException {
    SeasonText.two().file("mark.csv", "job\n").file("job.csv", "key,value\n").in(folder);

    assertThat(problems())
        .anyMatch(
            said ->
                said.startsWith(
                    "mark.csv: no season's table has that name; did you mean marks.csv?"))
        .anyMatch(
            said ->
                said.startsWith("job.csv: in a season the facts of the jobs stand in jobs.csv"));
  }

  @Test
  void aMissingTable_isSaid() throws IOException {
    SeasonText.two().without("rates.csv").in(folder);

    assertThat(problems())
        .containsExactly(
            "rates.csv: this table is missing from " + folder + " and from the folder above it");
  }

  @Test
  void manyLinesOfAJobThatIsNotThere_areOneProblem() throws IOException {
    SeasonText.two().with("planes.csv", ",Ash,", ",Elm,").in(folder);

    assertThat(problems())
        .containsExactly(
            "planes.csv, line 2, column job: \"Elm\" is not a job of jobs.csv; it has Ash, Oak; so has 1 more line");
  }

  @Test
  void anOpenedJobWithoutMarks_hasAnEmptyTableOfThem() throws IOException {
    SeasonText.two()
        .with("jobs.csv", "blocked_edges,note", "blocked_edges,stage,opened_on,note")
        .with("jobs.csv", ",no,invented", ",no,opened,2027-06-01,")
        .in(folder);

    assertThat(problems())
        .anyMatch(said -> said.startsWith("agreed.csv: job Ash: this table is missing"))
        .noneMatch(said -> said.contains("marks"));
  }

  @Test
  void aFolderOfJobFolders_isReadTheSame() throws IOException {
    Season season = Season.in(Path.of("demo-data"));

    assertThat(Season.isOne(Path.of("demo-data"))).isTrue();
    assertThat(season.jobs())
        .extracting(SeasonJob::name)
        .contains("quince-hollow", "cinder-brook")
        .doesNotContain("whole-life");
    assertThat(season.ofEach(SeasonJob::job)).hasSameSizeAs(season.jobs());
  }

  @Test
  void aJobFolder_isNoSeason() {
    assertThat(Season.isOne(Path.of("demo-data", "quince-hollow"))).isFalse();
    assertThat(Season.isOne(folder)).isFalse();
    assertThat(Season.isOne(folder.resolve("nowhere"))).isFalse();
  }

  @Test
  void foldersAreCountedAsPeopleCount() throws IOException {
    for (String name : List.of("job 10", "job 9", ".hidden", "pictures")) {
      Files.createDirectories(folder.resolve(name));
    }
    for (String name : List.of("job 10", "job 9", ".hidden")) {
      copy(Path.of("demo-data", "quince-hollow"), folder.resolve(name));
    }

    assertThat(Season.in(folder).jobs())
        .extracting(SeasonJob::name)
        .containsExactly("job 9", "job 10");
  }

  @Test
  void whatIsWrongInAJobFolder_isSaidWithTheFolder() throws IOException {
    copy(Path.of("demo-data", "quince-hollow"), folder.resolve("elm"));
    copy(Path.of("demo-data", "quince-hollow"), folder.resolve("fir"));
    Files.delete(folder.resolve("elm").resolve("job.csv"));
    Files.writeString(folder.resolve("fir").resolve("planes.csv"), "plane,eave_ft\nA,x\n");

    assertThat(problems())
        .anyMatch(said -> said.startsWith("elm/job.csv: this table is missing from "))
        .anyMatch(said -> said.startsWith("fir/planes.csv, line 2, column eave_ft: "));
  }

  @Test
  void aSeasonKeptBothWays_isRefused() throws IOException {
    SeasonText.two().in(folder);
    copy(Path.of("demo-data", "quince-hollow"), folder.resolve("elm"));

    assertThat(problems())
        .singleElement()
        .asString()
        .startsWith("jobs.csv: the folder has this table and a job in ");
  }

  @Test
  void aStepOfOneJob_saysThatTheFolderIsASeason() throws IOException {
    SeasonText.two().in(folder);

    assertThat(said(() -> JobTables.in(folder)))
        .containsExactly(
            "jobs.csv: it makes this folder a season of many jobs; name the folder of one job");
  }

  private List<String> problems() {
    return said(
        () -> Season.in(folder).ofEach(SeasonJob::job).stream().map(Estimate::new).toList());
  }

  private static List<String> said(Runnable work) {
    try {
      work.run();
      return List.of();
    } catch (ProblemsException wrong) {
      return wrong.problems().stream().map(Problem::toString).toList();
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }
}
