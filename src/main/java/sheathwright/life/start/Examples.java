package sheathwright.life.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sheathwright.job.JobTable;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;

/** What a field of a table may look like when it is filled in, from the invented jobs. */
final class Examples {

  private static final String FILE = "examples.csv";

  private final Map<String, String> byField = new LinkedHashMap<>();

  Examples() {
    try (InputStream stream = Examples.class.getResourceAsStream(FILE)) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      CsvFile.parse(FILE, text)
          .lines()
          .forEach(line -> byField.put(line.cells().get(0), line.cells().get(1)));
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
  }

  /** That of a field of a table. */
  Optional<String> of(JobTable table, Field<?> field) {
    return Optional.ofNullable(byField.get(table.word() + "." + field.name()));
  }
}
