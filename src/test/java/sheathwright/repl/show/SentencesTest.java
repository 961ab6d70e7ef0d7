package sheathwright.repl.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed as to a person is answered with a line that can be typed; Java is left alone. */
class SentencesTest {

  private static final List<String> COMMANDS = List.of("explain", "save", "undo");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "area 1400 sqft | a name is given a value with =: area = 1400 sqft",
        "price $41.25 | a name is given a value with =: price = $41.25",
        "span 11-6 ft | a name is given a value with =: span = 11-6 ft",
        "area = 1,400 sqft | 1,400 has a comma; write area = 1400 sqft",
        "1,400 sqft | 1,400 has a comma; write 1400 sqft",
        "area = 42 x 16.5 ft | times is written *: area = 42 ft * 16.5 ft",
        "42 ft x 16 ft | times is written *: 42 ft * 16 ft",
        "span = 11 ft 6 in | feet and inches go together as 11-6 ft: span = 11-6 ft",
        "rafterThrust(span = 11 ft 6 1/2 in, rise = 4 in 12) | feet and inches go together as 11-6 1/2 ft: rafterThrust(span = 11-6 1/2 ft, rise = 4 in 12)",
        "slopeFactor(6:12) | a pitch is said with in: slopeFactor(6 in 12)",
        "rafters = every 24 in | this is no line that can be worked out; help every tells what there is for it",
        "how many nails? | this is no line that can be worked out; help nails tells what there is for it",
        "nails per sheet | this is no line that can be worked out; help nails per sheet tells what there is for it",
        "rafters 2x6 at 24 | this is no line that can be worked out; help rafters tells what there is for it",
        "explian area | there is no \"explian\" to begin a line with; perhaps explain area",
        "blue sky | this is no line that can be worked out; help tells what there is",
      })
  void aSentence_isAnsweredWithALineToType(String line, String said) {
    assertThat(Sentences.said(line, COMMANDS, words -> words.matches("nails.*|rafters|every")))
        .contains(said);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "int a, b",
        "String said",
        "import java.util.List",
        "area = 1400 sqft",
        "a + b",
        "f(1,400)",
        "text = \"1,400\"",
        "return a",
        "for (int i = 0; i < 3; i++)",
        "\"how many nails\"",
        "x = y",
        "x = new Object()",
        "boxes = nails / 2500",
        "boxes - crates",
        "x = a ? 6 : 12",
        "a",
      })
  void whatIsMeantForJava_isNone(String line) {
    assertThat(Sentences.said(line, COMMANDS, words -> true)).isEmpty();
  }
}
