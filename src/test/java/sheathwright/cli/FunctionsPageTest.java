package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Reference;

class FunctionsPageTest {

  /** Every function has its place in a chapter. */
  @Test
  void thePage_holdsEveryFunctionOnce() {
    String page = Reference.document(Catalog.shipped().cards());
    assertThat(Catalog.shipped().cards())
        .allSatisfy(card -> assertThat(page).containsOnlyOnce("\n### " + card.name() + "\n"));
  }

  @Test
  void thePage_isWhatTheCommandWritesToday() throws IOException {
    assertThat(Files.readString(Path.of("docs", "functions.md")))
        .as("run ./sheathwright functions --markdown > docs/functions.md")
        .isEqualTo(Reference.document(Catalog.shipped().cards()));
  }
}
