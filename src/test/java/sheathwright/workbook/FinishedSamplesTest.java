package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.workbook.page.Samples;

/**
 * The finished samples are what the program writes today, part by part (how tightly a JDK packs
 * them may differ).
 */
class FinishedSamplesTest {

  private static final Map<String, byte[]> WRITTEN = new LinkedHashMap<>();

  static Stream<String> books() {
    return Samples.everyJob().stream().flatMap(job -> Stream.of(job + "-estimate", job + "-quote"));
  }

  @ParameterizedTest
  @MethodSource("books")
  void aSample_isCurrent(String book) throws IOException {
    int end = book.lastIndexOf('-');
    Path sample = Path.of("workbooks", book.substring(0, end), book.substring(end + 1) + ".xlsx");

    assertThat(sample).as("make it: workbooks/README.md says how").exists();
    assertThat(Samples.parts(Files.readAllBytes(sample)))
        .as("make it anew: workbooks/README.md says how")
        .isEqualTo(Samples.parts(written(book.substring(0, end)).get(book)));
  }

  /** Most are written for other tests already; the others once for all here. */
  private static Map<String, byte[]> written(String job) {
    if (Samples.JOBS.contains(job)) {
      return Samples.all();
    }
    if (!WRITTEN.containsKey(job + "-quote")) {
      WRITTEN.putAll(Samples.ofJob(job));
    }
    return WRITTEN;
  }
}
