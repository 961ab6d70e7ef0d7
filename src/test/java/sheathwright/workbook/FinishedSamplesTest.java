package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.workbook.page.Samples;

/**
 * The finished samples are what the program writes today, part by part (how tightly a JDK packs
 * them may differ).
 */
class FinishedSamplesTest {

  @ParameterizedTest
  @CsvSource({
    "quince-hollow,estimate",
    "quince-hollow,quote",
    "mistwater-cottage,estimate",
    "mistwater-cottage,quote",
    "cinder-brook,estimate",
    "cinder-brook,quote"
  })
  void aSample_isCurrent(String job, String book) throws IOException {
    byte[] sample = Files.readAllBytes(Path.of("workbooks", job, book + ".xlsx"));

    assertThat(parts(sample))
        .as("make it anew: workbooks/README.md says how")
        .isEqualTo(parts(Samples.all().get(job + "-" + book)));
  }

  private static Map<String, String> parts(byte[] file) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return parts;
  }
}
