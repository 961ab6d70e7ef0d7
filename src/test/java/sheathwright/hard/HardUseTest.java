package sheathwright.hard;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.repl.Script;

/**
 * Every reader is given spoiled input: nothing hangs, no file is half written, and what is wrong is
 * said without a stack trace. {@code -Dinputs=10000} tries that many on each, {@code -Dseed=17}
 * others, {@code -Dfirst=123} begins with that one, {@code -Dreaders=FILL} asks that reader alone.
 */
class HardUseTest {

  /** In the gate: so many of the cheapest reader, fewer of the others. */
  private static final int SHORT = 150;

  private static final int INPUTS = Integer.getInteger("inputs", 0);
  private static final String READERS = System.getProperty("readers", "");
  private static final int FIRST = Integer.getInteger("first", 0);
  private static final long SEED = Long.getLong("seed", 20_261_128);
  private static final int SECONDS_AT_MOST = 60;

  @TempDir private Path folder;

  private final ExecutorService apart =
      Executors.newCachedThreadPool(
          run -> {
            Thread thread = new Thread(null, run, "spoiled", 0);
            thread.setDaemon(true);
            return thread;
          });

  @AfterEach
  void end() {
    apart.shutdownNow();
  }

  @ParameterizedTest
  @EnumSource
  void everySpoiledInput_isReadOrRefused(Reader reader) throws Exception {
    assumeTrue(READERS.isEmpty() || READERS.contains(reader.name()), "not asked for");
    int inputs = INPUTS > 0 ? INPUTS : Math.max(2, SHORT / reader.cost());
    StringBuilder faults = new StringBuilder();
    int count = 0;
    for (int input = FIRST; input < FIRST + inputs && count < 30; input++) {
      try {
        tried(reader, input);
      } catch (Throwable fault) {
        count++;
        String said = String.valueOf(fault.getMessage());
        faults
            .append("%n%s input %d: ".formatted(reader, input))
            .append(fault.getClass().getSimpleName())
            .append(": ")
            .append(said, 0, Math.min(said.length(), 1_500));
        if (!(fault instanceof AssertionError)) {
          Stream.of(fault.getStackTrace())
              .limit(8)
              .forEach(at -> faults.append("\n    ").append(at));
        }
      }
    }
    if (count > 0) {
      fail("seed " + SEED + ", " + count + " faults:" + faults);
    }
  }

  /** Found by this test, each by another cause. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "layoutChoices(roof,12'-3\", sheet = $38/sheet, block = $4/piece)",
        "cutSticks(straight,1/0, $8.60), stick(14 ft, $10.90))",
        "sisterStock(sag = 1-3/8 in, span = 12 ft,, count = 6) count = 6)",
        "layoutChoices(home,5 %, sheet = $38/sheet, block = $4/piece)",
        "-2+3+cmd,16-9 1!/4 ft)",
        "0}{n8a|[",
        "home “"
      })
  void aLineThatOnceEndedTheSession_isAnswered(String line) {
    answered(line);
  }

  /** An inch mark hid the brackets behind it from whoever counts them before the compiler does. */
  @Test
  void bracketsTooDeepBehindAnInchMark_areAnswered() {
    answered("pull = sheathingUplift(height = 18 ft,12'-3\"," + "(".repeat(3_000) + ", zone = 3)");
  }

  private static void answered(String line) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String home = "straight = plane \"A\"\nroof = 12 ft\nhome = 5\n";
    int status =
        Script.pipe(
            new BufferedReader(new StringReader(home + line + "\n1 + 1\n")),
            new PrintWriter(out, true),
            new PrintWriter(err, true));
    new Ran(status, out.toString(), err.toString()).holds();
  }

  private void tried(Reader reader, int input) throws Throwable {
    Path empty = Files.createDirectory(folder.resolve(reader + "-" + input));
    Random random = new Random(SEED * 1_000_003 + input);
    Future<?> end = apart.submit(() -> reader.tries(random, empty));
    try {
      end.get(SECONDS_AT_MOST, TimeUnit.SECONDS);
    } catch (java.util.concurrent.ExecutionException thrown) {
      throw thrown.getCause();
    } catch (TimeoutException late) {
      end.cancel(true);
      fail("it took longer than " + SECONDS_AT_MOST + " s");
    }
    cleared(empty);
  }

  static void cleared(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
