package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Catalog;

/** The certified cases hold, and a spoiled one is told. */
class CertifiedCasesTest {

  static Stream<String> files() {
    return Shipped.below(CertifiedCases.FOLDER).keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyCaseHolds(String file) {
    Tested tested = Tested.of(Catalog.shipped().named(file.replace(".csv", "")));
    assertThat(tested.card().name() + ".csv").isEqualTo(file);
    assertThat(tested.problems()).isEmpty();
    assertThat(tested.outcomes()).isNotEmpty();
  }

  /** No case is counted twice: each has a number of its own in its file. */
  @ParameterizedTest
  @MethodSource("files")
  void everyCase_isOne(String file) {
    CaseTable table =
        CertifiedCases.of(Catalog.shipped().named(file.replace(".csv", ""))).orElseThrow();
    List<String> labels = table.cases().stream().map(CertifiedCase::label).toList();
    assertThat(labels).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("files")
  void aCaseThatWasSpoiled_isTold(String file) {
    CertifiedCases.of(Catalog.shipped().named(file.replace(".csv", "")))
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
