package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
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

  private static final Set<String> WIND = Set.of("sheathing_uplift", "velocity_pressure");

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

  /**
   * The page lists so many cells, which a test makes anew from print; those of wind are certified
   * cases that say so, and the page has their number.
   */
  @ParameterizedTest
  @MethodSource("disagreements")
  void itsCells_areListedOnItsPage(Disagreement each) throws IOException {
    if (WIND.contains(each.function())) {
      String safe =
          each.side().startsWith("print") ? "print is the safe side" : "value is the safe side";
      long cases =
          CertifiedCases.of(Catalog.shipped().named(each.function())).orElseThrow().cases().stream()
              .filter(one -> one.source().contains("known disagreement"))
              .filter(one -> one.source().contains(safe))
              .count();
      assertThat(each.cells()).isEqualTo(cases + " cells");
      assertThat(section(each, "## Wind")).contains(String.valueOf(cases));
      return;
    }
    String heading =
        each.function().equals("heel_nails")
            ? "## Nails of heel joints"
            : each.side().contains("unsafe")
                ? "## Print is unsafe"
                : "## Print is on the safe side";
    long rows =
        section(each, heading)
            .lines()
            .filter(line -> line.startsWith("|") && line.contains("**"))
            .count();
    assertThat(each.cells()).isEqualTo(rows + " cells");
  }

  private static String section(Disagreement of, String heading) throws IOException {
    String page = Files.readString(Path.of(of.page()));
    return page.substring(page.indexOf(heading) + heading.length()).split("\n## ")[0];
  }
}
