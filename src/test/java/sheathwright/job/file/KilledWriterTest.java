package sheathwright.job.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process is killed in the middle of writing two files: after the next run in the folder both are
 * of the same turn, and nothing else is there. {@code -Dkills=30} does it more often.
 */
class KilledWriterTest {

  private static final int KILLS = Integer.getInteger("kills", 5);
  private static final int MILLISECONDS_AT_MOST = 60;

  @TempDir private Path folder;

  @Test
  void aKilledRun_leavesBothFilesOldOrBothNew() throws Exception {
    Random random = new Random(17);
    int drafts = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Process writer = begun("together");
      TimeUnit.MILLISECONDS.sleep(random.nextInt(MILLISECONDS_AT_MOST));
      writer.destroyForcibly().waitFor();
      drafts += names().size() > 2 ? 1 : 0;
      NewFile.at(folder.resolve("next.xlsx"), true);
      assertThat(names()).containsExactlyInAnyOrder("estimate.xlsx", "quote.xlsx");
      String estimate = Files.readString(folder.resolve("estimate.xlsx"));
      assertThat(estimate).isEqualTo(Files.readString(folder.resolve("quote.xlsx")));
      assertThat(estimate.lines().distinct()).as("it is whole").hasSize(1);
      assertThat(estimate).hasLineCount(2_000);
    }
    assertThat(drafts).as("kills that met a run in the middle of writing").isPositive();
  }

  /** As by Ctrl-C: no next run is needed. */
  @Test
  void aRunThatIsToldToEnd_takesItsDraftAway() throws Exception {
    Process writer = begun("forever");
    assertThat(names()).hasSize(1).allMatch(name -> name.endsWith(".part"));
    writer.destroy();
    writer.waitFor();
    assertThat(names()).isEmpty();
  }

  private Process begun(String how) throws IOException {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                KilledWriter.class.getName(),
                folder.toString(),
                how)
            .start();
    assertThat(writer.inputReader().readLine()).isEqualTo("begun");
    return writer;
  }

  private List<String> names() throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).toList();
    }
  }
}
