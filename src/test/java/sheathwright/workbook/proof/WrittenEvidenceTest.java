package sheathwright.workbook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Catalog;

/** The page and the files that are written from the cases are those of today's cases. */
class WrittenEvidenceTest {

  @Test
  void everyFile_isCurrent() throws IOException {
    for (var file : WrittenEvidence.all().entrySet()) {
      assertThat(Files.readString(file.getKey()))
          .as(file.getKey() + " is out of date; run src/build/verification.sh")
          .isEqualTo(file.getValue());
    }
  }

  @Test
  void thePage_hasALineForEachFunction() throws IOException {
    String page = Files.readString(WrittenEvidence.PAGE);
    assertThat(Catalog.shipped().cards())
        .allSatisfy(card -> assertThat(page).containsOnlyOnce("\n| `" + card.name() + "` |"));
    for (int section = 1; section <= 9; section++) {
      assertThat(page).contains("\n## " + section + ". ");
    }
  }

  @Test
  void whatIsLinked_isThere() throws IOException {
    Pattern.compile("\\]\\(([^)#]+)\\)")
        .matcher(Files.readString(WrittenEvidence.PAGE))
        .results()
        .forEach(link -> assertThat(Path.of("docs").resolve(link.group(1))).exists());
  }
}
