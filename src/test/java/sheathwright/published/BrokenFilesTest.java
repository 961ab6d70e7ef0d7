package sheathwright.published;

import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A table that was typed wrong stops, with its file's name, before anybody reads a value of it. */
class BrokenFilesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "made/ragged.csv         | made/ragged.csv, line 6 has 2 columns",
        "made/unknown-mark.csv   | made/unknown-mark.csv has a mark that nobody knows",
        "made/without-source.csv | `made/without-source.csv has no line \"source: \"`",
      })
  void table_isNotMade(String file, String said) {
    assertThatIllegalStateException()
        .isThrownBy(() -> Published.table(file, "made", "made tables", 1))
        .withMessage("%s", said);
  }
}
