package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.Walk;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;

/** The certified cases hold, and a spoiled one is told. */
class CertifiedCasesTest {

  /** Each table, and whether a case of it is spoiled, for which all of it is worked out again. */
  static Stream<Arguments> files() {
    List<String> files = List.copyOf(Shipped.below(CertifiedCases.FOLDER).keySet());
    return IntStream.range(0, files.size())
        .mapToObj(each -> Arguments.of(files.get(each), Walk.takes(each)));
  }

  /** Every case holds and is one; one that was spoiled is told, and it alone. */
  @ParameterizedTest
  @MethodSource("files")
  void aTableOfCases_isSound(String file, boolean isSpoiled) {
    Card card = Catalog.shipped().named(file.replace(".csv", ""));
    assertThat(card.name() + ".csv").isEqualTo(file);
    CaseTable table = CertifiedCases.of(card).orElseThrow();
    assertThat(table.outcomes()).isNotEmpty().flatExtracting(Outcome::problems).isEmpty();
    assertThat(table.cases()).extracting(CertifiedCase::label).doesNotHaveDuplicates();
    Optional.of(table)
        .filter(each -> isSpoiled)
        .flatMap(PlantedCase::in)
        .ifPresent(
            planted -> {
              assertThat(planted.isFound()).isTrue();
              assertThat(planted.outcome().holds()).isFalse();
            });
  }

  @Test
  void aFunctionWithoutCases_saysSo() {
    Tested none = new Tested(Catalog.shipped().named("slope_factor"), List.of());
    assertThat(none.hasCases()).isFalse();
    assertThat(Standing.of(none)).isEqualTo(Standing.UNCHECKED);
    assertThat(Told.line(none)).startsWith("no certified case");
  }
}
