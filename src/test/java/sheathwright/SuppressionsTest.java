package sheathwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever silences the compiler or the static analysis says why. */
class SuppressionsTest {

  private static final String SILENCED = "@Suppress" + "Warnings(";

  @Test
  void everySilencedWarning_hasAReason() throws IOException {
    List<String> without = new ArrayList<>();
    for (String folder : List.of("src/main/java", "src/test/java", "src/benchmark/java")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
          Files.readAllLines(file).stream()
              .filter(line -> line.contains(SILENCED) && !line.matches(".*\\) // \\S.*"))
              .forEach(line -> without.add(file + ": " + line.strip()));
        }
      }
    }
    assertThat(without).isEmpty();
  }

  @Test
  void everythingTheAnalysisNeedNotTell_hasAReason() throws IOException {
    String filter = Files.readString(Path.of("src/build/spotbugs.xml"));
    int matches = filter.split("<Match>", -1).length - 1;
    int explained = filter.split("-->\\s*<Match>", -1).length - 1;
    assertThat(matches).isPositive().isEqualTo(explained);
  }
}
