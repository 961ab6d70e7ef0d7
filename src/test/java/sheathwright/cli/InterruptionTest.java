package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A search that is told to end, as Ctrl-C tells it, hands over what it has. */
class InterruptionTest {

  private static final int PIECES = 150;

  @TempDir Path folder;

  /** Sides of many kinds, whose plan stays open for much longer than anybody waits. */
  private Path hardList() throws IOException {
    Random random = new Random(1);
    StringBuilder table = new StringBuilder("width_in,height_in,count,label\n");
    for (int i = 0; i < PIECES; i++) {
      table.append(
          "%d-%d/16,%d-%d/16,1,p%d%n"
              .formatted(
                  10 + random.nextInt(61),
                  1 + 2 * random.nextInt(4),
                  6 + random.nextInt(35),
                  1 + 2 * random.nextInt(4),
                  i));
    }
    return Files.writeString(folder.resolve("pieces.csv"), table);
  }

  /** The end is asked for by a signal that no shell keeps from a test; Java answers both alike. */
  @Test
  void solve_toldToEnd_printsTheBestPlanSoFarWithItsBound() throws Exception {
    Path out = folder.resolve("out.csv");
    Process solving =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dsheathwright.terminals=err",
                "-cp",
                System.getProperty("java.class.path"),
                "sheathwright.cli.Main",
                "solve",
                "cut_sheets",
                hardList().toString(),
                "seconds=600")
            .redirectOutput(out.toFile())
            .start();
    String said;
    try (BufferedReader err = solving.errorReader()) {
      char[] begun = new char[20];
      assertThat(err.read(begun)).isPositive(); // how far it is: the search goes on
      solving.toHandle().destroy(); // unlike destroy() it closes no stream
      said = err.lines().collect(Collectors.joining("\n"));
    }
    assertThat(solving.waitFor(30, TimeUnit.SECONDS)).isTrue();
    assertThat(said).containsPattern("sheets \\d+, at least \\d+, open\nstopped: this is the best");
    assertThat(Files.readAllLines(out)).hasSize(1 + PIECES);
  }
}
