package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FunctionsCommandTest {

  @Test
  void functions_listsALineAFunction() {
    CommandRun ran = CommandRun.of("functions");
    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out().lines())
        .hasSizeGreaterThanOrEqualTo(7)
        .anyMatch(line -> line.startsWith("nails_per_sheet "))
        .anyMatch(line -> line.startsWith("sister_stock "))
        .allSatisfy(line -> assertThat(line).matches("[a-z_]+ +[A-Z].*\\."));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"nails_per_sheet", "nailsPerSheet", "NAILS_PER_SHEET"})
  void functions_showsThePageOfAFunction(String name) {
    CommandRun ran = CommandRun.of("functions", name);
    assertThat(ran.status()).isZero();
    assertThat(ran.out().lines().toList())
        .startsWith("nails_per_sheet")
        .contains("takes", "gives", "refuses", "example", "source");
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("support_spacing_in", "[no if left out]", "(yes, no)", "// 43 nails/sheet");
  }

  @Test
  void functions_findsThoseThatSpeakOfSomeWords() {
    CommandRun one = CommandRun.of("functions", "sister", "nails");
    assertThat(one.status()).isZero();
    assertThat(one.out()).contains("sister_stock ").doesNotContain("sheets_by_area");
    CommandRun several = CommandRun.of("functions", "rafter");
    assertThat(several.out()).contains("rafter_check", "rafter_max_span");
  }

  @Test
  void functions_ofAWordThatNoneSpeaksOfNamesTheNearest() {
    CommandRun ran = CommandRun.of("functions", "nails_per_shet");
    assertThat(ran.status()).isNotZero();
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("there is no function \"nails_per_shet\"", "nails_per_sheet");
  }

  @Test
  void functions_ofWordsThatNoneSpeaksOfSaysWhatToTry() {
    CommandRun ran = CommandRun.of("functions", "nails", "teapot");
    assertThat(ran.status()).isNotZero();
    assertThat(ran.err())
        .contains(
            "no function speaks of all of: nails, teapot; try one word, or none for the whole list");
  }

  @Test
  void functions_writesOneMarkdownDocument() {
    CommandRun ran = CommandRun.of("functions", "--markdown");
    assertThat(ran.status()).isZero();
    assertThat(ran.out()).startsWith("# Functions").contains("### sheet_unit_price");
  }
}
