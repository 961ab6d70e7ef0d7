package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many jobs at once: a line each, and a bad one stops no other. */
class ManyQuotesTest {

  private static final Path DEMO = Path.of("demo-data", "quince-hollow");

  @TempDir private Path jobs;

  private LifeFolder job(String name) {
    return LifeFolder.of(DEMO, jobs.resolve(name));
  }

  @Test
  void each_getsALineWithItsTotalsItsQuestionsAndItsFiles() {
    LifeFolder one = job("one");
    LifeFolder two = job("two");
    two.replace("rates.csv", "margin_pct,12", "margin_pct,2");
    CommandRun run = CommandRun.of("quote", one.path(), two.path());
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines())
        .containsExactly(
            line(one.path(), "$10,873.00, at worst $16,372.00, 0 questions"),
            line(two.path(), "$10,843.00, at worst $15,778.00, 1 question"));
    assertThat(one.path().resolve("quote.xlsx")).isRegularFile();
    assertThat(two.path().resolve("estimate.xlsx")).isRegularFile();
  }

  private static String line(Path job, String sums) {
    return "%s: the homeowner pays %s; %s, %s"
        .formatted(job, sums, job.resolve("estimate.xlsx"), job.resolve("quote.xlsx"));
  }

  /** The same bytes as of the job alone. */
  @Test
  void each_isWrittenAsItIsAlone() throws IOException {
    LifeFolder one = job("one");
    LifeFolder two = job("two");
    CommandRun.of("quote", one.path(), two.path(), "-o", jobs.resolve("out"));
    one.done("quote");
    for (String file : List.of("quote.xlsx", "estimate.xlsx")) {
      assertThat(jobs.resolve("out").resolve("two").resolve(file))
          .hasBinaryContent(Files.readAllBytes(one.path().resolve(file)));
    }
    assertThat(two.path().resolve("quote.xlsx")).doesNotExist();
  }

  @Test
  void aBadOne_isOneLineWithItsPlace_andStopsNoOther() {
    LifeFolder bad = job("bad");
    bad.replace("job.csv", "valid_days,30", "valid_days,soon");
    bad.replace("job.csv", "permit_usd,165.00", "permit_usd,-1");
    LifeFolder asked = job("asked");
    asked.fact("stage", "asked");
    LifeFolder good = job("good");
    CommandRun run = CommandRun.of("quote", bad.path(), asked.path(), good.path());
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out().lines()).singleElement().asString().startsWith(good.path() + ": the ");
    assertThat(run.err().lines())
        .containsExactly(
            bad.path()
                + ": job.csv, line 8, column value: valid_days: \"soon\" is not a number; and 1 more, which quote says of this job alone",
            asked.path()
                + ": the job is at the stage asked; a quote takes surveyed or quoted: when it is measured, write surveyed behind stage in job.csv",
            "2 of 3 jobs refused");
    assertThat(bad.path().resolve("quote.xlsx")).doesNotExist();
  }

  @Test
  void whatLiesBetweenTheJobs_isPassedOver() throws IOException {
    LifeFolder one = job("one");
    Path rates = Files.writeString(jobs.resolve("prices.csv"), "item,usd\nsheet,40\nnail,0.02\n");
    Path notes = Files.writeString(jobs.resolve("notes.txt"), "ring the yard");
    CommandRun run = CommandRun.of("quote", notes, one.path(), rates);
    assertThat(run.status()).isZero();
    assertThat(run.err().strip()).isEqualTo(notes + ": passed over, it is no folder");
    CommandRun none = CommandRun.of("quote", notes, rates);
    assertThat(none.status()).isEqualTo(3);
    assertThat(none.err().strip())
        .isEqualTo(notes + ": none of these is a folder; a job is a folder of CSV files");
  }

  @Test
  void twoThatWouldGoIntoOneFolder_areRefused() {
    LifeFolder one = job("spring/one");
    LifeFolder other = job("fall/one");
    CommandRun run = CommandRun.of("quote", one.path(), other.path(), "-o", jobs.resolve("out"));
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err().strip())
        .isEqualTo(
            "%s: its workbooks would go into %s, as those of %s do; name one of the two"
                .formatted(other.path(), jobs.resolve("out").resolve("one"), one.path()));
    assertThat(jobs.resolve("out")).doesNotExist();
  }

  @Test
  void oneAtATime_isIssued() {
    CommandRun run =
        CommandRun.of(
            "quote", job("one").path(), job("two").path(), "--issue", "--on", "2027-05-04");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--issue sends one quote; name one job");
  }

  @Test
  void whoeverWatches_seesHowFarItIs() {
    Path bad = jobs.resolve("bad");
    System.setProperty("sheathwright.terminals", "err");
    CommandRun run;
    try {
      run = CommandRun.of("quote", bad, job("one").path());
    } finally {
      System.clearProperty("sheathwright.terminals");
    }
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err())
        .contains("\r1 of 2: ")
        .contains("\r2 of 2: ")
        .contains("\r" + bad + ": there is no such folder");
  }
}
