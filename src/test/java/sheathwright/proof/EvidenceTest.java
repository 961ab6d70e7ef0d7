package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Catalog;

/**
 * What is said of evidence names something that finds it again, and the numbers stand where it
 * says.
 */
class EvidenceTest {

  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,.]*\\d|\\d");

  static Stream<Evidence> evidence() {
    return Evidence.all().stream();
  }

  static Stream<Disagreement> disagreements() {
    return Disagreement.all().stream();
  }

  @ParameterizedTest
  @MethodSource("evidence")
  void whatFindsItAgain_isThere(Evidence evidence) throws IOException {
    if (evidence.by().contains("/")) {
      assertThat(Path.of(evidence.by())).exists();
    } else {
      try (Stream<Path> tests = Files.walk(Path.of("src", "test", "java"))) {
        assertThat(tests).anyMatch(each -> each.endsWith(evidence.by() + ".java"));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("evidence")
  void itsNumbers_standOnItsPage(Evidence evidence) throws IOException {
    if (!evidence.page().isEmpty()) {
      List<String> numbers =
          NUMBER.matcher(evidence.what()).results().map(MatchResult::group).toList();
      String page = Files.readString(Path.of(evidence.page()));
      assertThat(numbers).allSatisfy(number -> assertThat(page).contains(number));
    }
  }

  @ParameterizedTest
  @MethodSource("disagreements")
  void aDisagreement_isOfAFunction(Disagreement each) throws IOException {
    assertThat(Catalog.shipped().named(each.function()).name()).isEqualTo(each.function());
    assertThat(Path.of(each.page())).exists();
  }

  /** The page of printed tables, which a test makes anew from print, lists so many cells. */
  @ParameterizedTest
  @MethodSource("disagreements")
  void itsCells_areListedOnItsPage(Disagreement each) throws IOException {
    String heading =
        each.function().equals("heel_nails")
            ? "## Nails of heel joints"
            : each.side().contains("unsafe")
                ? "## Print is unsafe"
                : "## Print is on the safe side";
    String page = Files.readString(Path.of(each.page()));
    String section = page.substring(page.indexOf(heading) + heading.length()).split("\n## ")[0];
    long rows = section.lines().filter(line -> line.startsWith("|") && line.contains("**")).count();
    assertThat(each.cells()).isEqualTo(rows + " cells");
  }
}
