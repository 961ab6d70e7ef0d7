package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.job.table.CsvFile;
import sheathwright.workbook.file.Program;

/** No number changes from one release to the next without a sentence that says why. */
class FrozenNumbersTest {

  static Stream<Path> tables() throws IOException {
    return FrozenNumbers.tables().stream();
  }

  private static List<FrozenNumbers.Change> explained() {
    return ChangedNumber.all().stream()
        .filter(each -> Program.NAME.endsWith(" " + each.version()))
        .map(
            each ->
                new FrozenNumbers.Change(
                    each.function(), each.line(), each.column(), each.was(), each.now()))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyChange_isExplained(Path table) {
    assertThat(explained())
        .as("a number changed: put it right, or add it to proof/changed.csv with a reason")
        .containsAll(FrozenNumbers.changes(CsvFile.read(table)));
  }

  @Test
  void everyChange_hasAReason() {
    assertThat(ChangedNumber.all())
        .allSatisfy(each -> assertThat(each.why()).hasSizeGreaterThan(20));
  }

  @Test
  void theFreeze_isOfARelease() throws IOException {
    assertThat(FrozenNumbers.version()).matches("\\d+\\.\\d+\\.\\d+");
    assertThat(FrozenNumbers.tables()).isNotEmpty();
  }

  @Test
  void aNumberThatIsNotWhatItWas_isFound() {
    CsvFile frozen =
        CsvFile.parse("slope_factor.csv", "rise_in_12,slope_factor,error\n9,1.25,\n9,1.26,\n");
    assertThat(FrozenNumbers.changes(frozen))
        .containsExactly(
            new FrozenNumbers.Change("slope_factor", "3", "slope_factor", "1.26", "1.25"));
  }

  @Test
  void anAnswerThatIsRefusedSince_isFound() {
    CsvFile frozen = CsvFile.parse("slope_factor.csv", "rise_in_12,slope_factor,error\n25,2.31,\n");
    assertThat(FrozenNumbers.changes(frozen))
        .extracting(FrozenNumbers.Change::now)
        .containsExactly("refused");
  }
}
