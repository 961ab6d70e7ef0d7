package sheathwright.life.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A change order's number names its document and its row. */
class OrderNumberTest {

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "th-TH-u-nu-thai", "ar-EG-u-nu-arab", "fa-IR"})
  void itsDigitsAreTheSame_whateverTheMachineSpeaks(String language) {
    Tables tables = new Tables();
    tables.agreed("sheet", "place", "117.00", "3", "80.00", "", "A sheet");
    tables.agreed("line-1", "job", "1000.00", "1", "", "", "All work");
    tables.agreed("total", "", "1000.00", "", "", "", "All of it");
    tables.agreed("stage-1", "", "1000.00", "", "", "", "last");
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      assertThat(tables.next().number()).isEqualTo("01");
    } finally {
      Locale.setDefault(before);
    }
  }
}
