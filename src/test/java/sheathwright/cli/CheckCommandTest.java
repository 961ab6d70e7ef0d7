package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether {@code check} says of a job what {@code quote} would do, and writes nothing. */
class CheckCommandTest {

  private static final Path JOB = Path.of("demo-data", "quince-hollow");

  @TempDir Path folder;

  private Path copy(Path from, String name) throws IOException {
    Path job = Files.createDirectory(folder.resolve(name));
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, job.resolve(file.getFileName()));
      }
    }
    return job;
  }

  private static List<String> names(Path job) throws IOException {
    try (Stream<Path> files = Files.list(job)) {
      return files.map(Path::toString).sorted().toList();
    }
  }

  @Test
  void aGoodJob_passes_andNothingIsWritten() throws IOException {
    Path job = copy(JOB, "good");
    List<String> before = names(job);
    CommandRun ran = CommandRun.of("check", job);
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith(job + ": quote would write it\nthe homeowner pays $");
    assertThat(names(job)).isEqualTo(before);
  }

  @Test
  void whatQuoteRefuses_isRefused_inItsWords() throws IOException {
    Path job = copy(JOB, "bad");
    Path rates = job.resolve("rates.csv");
    Files.writeString(
        rates, Files.readString(rates).replaceFirst("(?m)^margin_pct,[^,\n]*", "margin_pct,120"));
    CommandRun ran = CommandRun.of("check", job);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .isEqualTo(CommandRun.of("quote", job).err())
        .contains("margin_pct is 120");
  }

  @Test
  void oneThatIsRefused_stopsNoOther() throws IOException {
    Path job = copy(JOB, "good");
    CommandRun ran = CommandRun.of("check", folder.resolve("none"), job);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).startsWith(job + ": quote would write it\n");
    assertThat(ran.err()).startsWith(folder.resolve("none") + ": there is no such folder;");
  }

  @Test
  void aStop_isSaidOnStandardError_andIsNoRefusal() throws IOException {
    Path stopped = stoppedJob();
    CommandRun ran = CommandRun.of("check", stopped);
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).contains("until then nobody repairs the rafters by this quote");
    assertThat(CommandRun.of("check", stopped, "--json", "--quiet").out())
        .startsWith("[\n{\"job\": \"")
        .doesNotContain("\"stops\": []");
  }

  /** A job of the demo whose rafters carry more than they can. */
  private static Path stoppedJob() throws IOException {
    try (Stream<Path> jobs = Files.list(Path.of("demo-data"))) {
      return jobs.filter(job -> Files.exists(job.resolve("job.csv")))
          .filter(job -> CommandRun.of("check", job).err().contains("nobody repairs"))
          .sorted()
          .findFirst()
          .orElseThrow();
    }
  }

  @Test
  void aSeason_isCheckedJobByJob() throws IOException {
    copy(JOB, "one");
    copy(JOB, "two");
    CommandRun ran = CommandRun.of("check", folder, "--json");
    assertThat(ran.status()).isZero();
    assertThat(ran.out().lines())
        .hasSize(4)
        .anyMatch(line -> line.startsWith("{\"job\": \"one\", \"total_usd\": "))
        .anyMatch(line -> line.startsWith("{\"job\": \"two\", \"total_usd\": "));
  }
}
