package sheathwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadEditionTest {

  @ParameterizedTest
  @CsvSource({"ASCE7_10, asce7-10, 7-10", "ASCE7_16, asce7-16, 7-16", "ASCE7_22, asce7-22, 7-22"})
  void edition_isWrittenLongAndShort(LoadEdition edition, String word, String number) {
    assertThat(edition.word()).isEqualTo(word);
    assertThat(edition.alsoWritten()).isEqualTo(number);
  }
}
