package sheathwright.workbook.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Catalog;

/** The page that is written from the cases; {@link VerificationTest} holds it current. */
class WrittenEvidenceTest {

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
