package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.Samples;

/** Ten questions to every workbook that leaves the house. */
class AccessibilityTest {

  static Iterable<String> names() {
    return Samples.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void rules15_16_39_everyQuestion_isAnsweredWell(String name) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
      for (Accessibility question : Accessibility.values()) {
        assertThat(question.faults(workbook)).as(name + ", " + question).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyQuestion_findsWhatIsWrong(Accessibility question) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(Samples.all().get("tallow-end-estimate"))) {
      question.spoil(workbook);
      assertThat(question.faults(workbook)).isNotEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"estimate", "quote", "change-order", "invoice", "deck-record"})
  void theNameOfAFile_saysWhichDocumentItIs(String document) throws IOException {
    String words = document.replace('-', ' ');
    for (String name : names()) {
      if (name.endsWith(document)) {
        try (XSSFWorkbook workbook = Cells.opened(Samples.all().get(name))) {
          assertThat(workbook.getProperties().getCoreProperties().getTitle())
              .satisfies(title -> assertThat(title.toLowerCase(Locale.US)).contains(words));
        }
      }
    }
  }

  @Test
  void thereAreTen() {
    assertThat(Accessibility.values()).hasSize(10);
  }
}
