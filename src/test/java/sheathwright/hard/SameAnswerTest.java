package sheathwright.hard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.cli.Main;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.page.Samples;

/**
 * The same job has the same answer: whatever the order of its rows and the ends of its lines,
 * wherever the machine stands, with no home folder, and in another JDK, which {@code SECOND_JDK}
 * names.
 */
class SameAnswerTest {

  private static final long SEED = Long.getLong("seed", 17);

  @TempDir private Path folder;

  static List<String> jobs() {
    return Samples.JOBS;
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void orderOfRows_doesNotMatter(String name) {
    JobText job = JobText.demo(name);
    Random random = new Random(SEED);
    List<Double> expected = answers(job);
    JobText shuffled = job;
    for (String table : job.tables().keySet()) {
      List<String> lines = new ArrayList<>(job.tables().get(table).lines().toList());
      Collections.shuffle(lines.subList(1, lines.size()), random);
      shuffled = shuffled.withTable(table, String.join("\n", lines));
    }
    assertEqual(answers(shuffled), expected);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void endsOfLines_doNotMatter(String name) {
    JobText job = JobText.demo(name);
    List<Double> expected = answers(job);
    JobText windows = job;
    for (Map.Entry<String, String> table : job.tables().entrySet()) {
      windows =
          windows.withTable(table.getKey(), "\uFEFF" + table.getValue().replace("\n", "\r\n"));
    }
    assertThat(answers(windows)).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void moreWaste_neverMeansLess(String name) {
    JobText job = JobText.demo(name);
    String rates = job.tables().get("rates");
    if (!rates.contains("\nwaste_pct,")) {
      return;
    }
    double sheets = 0;
    double total = 0;
    for (int waste = 0; waste <= 20; waste += 10) {
      Estimate estimate =
          new Estimate(
              job.withTable(
                      "rates", rates.replaceFirst("(?m)^waste_pct,[^,]*", "waste_pct," + waste))
                  .job());
      assertThat(estimate.total().value())
          .as("total at %d %%", waste)
          .isGreaterThanOrEqualTo(total);
      assertThat(estimate.sheetsAtWorst().value()).isGreaterThanOrEqualTo(sheets);
      total = estimate.total().value();
      sheets = estimate.sheetsAtWorst().value();
    }
  }

  private static List<Double> answers(JobText job) {
    Estimate estimate = new Estimate(job.job());
    return List.of(
        estimate.total().value(),
        estimate.deckArea().value(),
        estimate.deckSheets().value(),
        estimate.plannedSheets().value(),
        estimate.sheetsAtWorst().value());
  }

  private static void assertEqual(List<Double> answers, List<Double> expected) {
    for (int i = 0; i < expected.size(); i++) {
      assertThat(answers.get(i)).isCloseTo(expected.get(i), within(1e-9 * expected.get(i)));
    }
  }

  @Test
  void anotherPlace_givesTheSameBytes() throws Exception {
    Map<String, Long> here = quoted(List.of(), "here");
    assertThat(here).hasSizeGreaterThan(2);
    List<String> abroad =
        List.of(
            "-Duser.language=tr",
            "-Duser.country=TR",
            "-Duser.timezone=Pacific/Kiritimati",
            "-Duser.home=/nowhere/at/all",
            "-Dline.separator=\r\n");
    assertThat(quoted(abroad, "abroad")).isEqualTo(here);
  }

  /** Who calls the library from Java has set nothing. */
  @Test
  void anotherLanguage_givesTheSameBytes() {
    JobText job = JobText.demo("mistwater-cottage");
    JobBooks here = JobBooks.of(new Estimate(job.job()));
    Locale home = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      JobBooks abroad = JobBooks.of(new Estimate(job.job()));
      assertThat(abroad.homeowner()).isEqualTo(here.homeowner());
      assertThat(abroad.office()).isEqualTo(here.office());
    } finally {
      Locale.setDefault(home);
    }
  }

  @Test
  void anotherJdk_givesTheSameBytes() throws Exception {
    String second = System.getenv("SECOND_JDK");
    assumeTrue(second != null, "SECOND_JDK names none");
    Map<String, Long> here = quoted(List.of(), "here");
    assertThat(quoted(Path.of(second), List.of(), "there")).isEqualTo(here);
  }

  private Map<String, Long> quoted(List<String> options, String into) throws Exception {
    return quoted(Path.of(System.getProperty("java.home")), options, into);
  }

  private Map<String, Long> quoted(Path jdk, List<String> options, String into)
      throws IOException, InterruptedException {
    Path job = Sent.copied(Path.of("demo-data", "mistwater-cottage"), folder.resolve(into));
    List<String> command = new ArrayList<>();
    command.add(jdk.resolve("bin").resolve("java").toString());
    command.addAll(options);
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.addAll(List.of(Main.class.getName(), "quote", job.toString()));
    Process run =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    assertThat(run.waitFor()).isZero();
    return Ran.files(job);
  }
}
