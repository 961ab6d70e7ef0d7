package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/** The words of a parameter, and a number that may stay open. */
class ParameterWordsTest {

  private static final Limits IF_MEASURED =
      new Limits(0, 3, Limits.Kind.IF_MEASURED, "what a string shows");

  /** Words that are no more than their names. */
  enum Plain {
    ON,
    OFF
  }

  private static Parameter words(Class<? extends Enum<?>> options) {
    return new Parameter("w", "w", null, options, "", Limits.NONE, "", List.of(), "");
  }

  private static Parameter number(String preset, Limits limits) {
    return new Parameter("n", "bow_in", Units.INCH, null, preset, limits, "", List.of(), "");
  }

  @Test
  void words_areWrittenLongAndSaidShort() {
    assertThat(words(LoadEdition.class).words())
        .containsExactly("asce7-10", "asce7-16", "asce7-22");
    assertThat(words(LoadEdition.class).spoken()).containsExactly("7-10", "7-16", "7-22");
    assertThat(words(Plain.class).words()).containsExactly("ON", "OFF");
    assertThat(words(Plain.class).spoken()).containsExactly("ON", "OFF");
    assertThat(number("", Limits.NONE).words()).isEmpty();
    assertThat(number("", Limits.NONE).spoken()).isEmpty();
  }

  @Test
  void option_isFoundByEitherSpelling() {
    assertThat(Parameter.option("7-16", LoadEdition.class).orElseThrow())
        .isEqualTo(LoadEdition.ASCE7_16);
    assertThat(Parameter.option("ASCE7_16", LoadEdition.class).orElseThrow())
        .isEqualTo(LoadEdition.ASCE7_16);
    assertThat(Parameter.option("asce7 16", LoadEdition.class).orElseThrow())
        .isEqualTo(LoadEdition.ASCE7_16);
    assertThat(Parameter.option("7-05", LoadEdition.class)).isEmpty();
  }

  @Test
  void number_thatNobodyMeasuredStaysOpen() {
    Parameter bow = number("not measured", IF_MEASURED);
    for (String text : List.of("", " not measured ")) {
      Figure<?> read = (Figure<?>) bow.read(text, Source.GIVEN);
      assertThat(read.isAbsent()).isTrue();
      assertThat(read.name()).isEqualTo("bow_in");
      assertThat(read.unit()).isEqualTo(Units.INCH);
    }
    assertThat(bow.isLeftOpen("not measured")).isTrue();
    assertThat(bow.isLeftOpen("2")).isFalse();
    assertThat(number("2", Limits.NONE).isLeftOpen("2")).isFalse();
    assertThat(bow.read("2", Source.GIVEN).plain()).isEqualTo("2");
  }

  @Test
  void parameter_withAPresetNeedNotBeGiven() {
    assertThat(number("2", Limits.NONE).isRequired()).isFalse();
    assertThat(number("", Limits.NONE).isRequired()).isTrue();
  }
}
