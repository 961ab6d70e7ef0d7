package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.season.SeasonText;

/** Quoting all jobs of a season at once. */
class SeasonQuotesTest {

  @TempDir private Path folder;
  @TempDir private Path out;

  @Test
  void eachJobsWorkbooks_goIntoAFolderOfItsName() throws IOException {
    CommandRun ran = CommandRun.of("quote", SeasonText.two().in(folder), "-o", out);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.out().lines()).hasSize(2);
    assertThat(ran.out()).contains("Ash: the homeowner pays ", "Oak: the homeowner pays ");
    assertThat(written())
        .containsExactlyInAnyOrder(
            "Ash/estimate.xlsx", "Ash/quote.xlsx", "Oak/estimate.xlsx", "Oak/quote.xlsx");
  }

  @Test
  void oneJobThatCannotBeRead_leavesNothingBehind() throws IOException {
    SeasonText.two().with("jobs.csv", ",2027-05-05,", ",soon,").in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "-o", out);

    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err()).startsWith("jobs.csv, line 3, column quote_date: \"soon\" is not a date");
    assertThat(written()).isEmpty();
  }

  @Test
  void aJobThatWasOnlyAskedFor_isLeftOut() throws IOException {
    SeasonText.two()
        .with("jobs.csv", "blocked_edges,note", "blocked_edges,stage,note")
        .with("jobs.csv", ",no,invented", ",no,asked,invented")
        .in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "-o", out);

    assertThat(ran.status()).as(ran.err()).isZero();
    assertThat(ran.err().lines()).contains("Ash: left out, it is at the stage asked");
    assertThat(written()).containsExactlyInAnyOrder("Oak/estimate.xlsx", "Oak/quote.xlsx");
  }

  @Test
  void issuing_takesOneJob() throws IOException {
    SeasonText.two().in(folder);

    CommandRun ran = CommandRun.of("quote", folder, "--issue", "--on", "2027-05-04");

    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).contains("is a season; name the folder of one job");
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.walk(out)) {
      return files.filter(Files::isRegularFile).map(out::relativize).map(Path::toString).toList();
    }
  }
}
