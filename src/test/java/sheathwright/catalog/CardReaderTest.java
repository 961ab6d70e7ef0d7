package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.Units;

/** What a card says is what stands at the function and in the index. */
class CardReaderTest {

  @Test
  void places_areThoseOfTheIndexInOrder() {
    assertThat(new CardReader(MadeFunctions.index()).places())
        .containsExactly(MadeFunctions.place("cutOff"), MadeFunctions.place("stacked"));
    assertThat(CardReader.name(MadeFunctions.place("stacked"))).isEqualTo("stacked");
  }

  @ParameterizedTest
  @CsvSource({
    "cutOff, cut_off",
    "stacked, stacked",
    "holds, holds",
    "seen, seen",
    "refused, refused",
    "broken, broken"
  })
  void card_isOfTheMarkedMethodOfThisName(String function, String name) {
    Card card = MadeFunctions.card(function);
    assertThat(card.name()).isEqualTo(name);
    assertThat(card.call()).isEqualTo(function);
    assertThat(card.method().getName()).isEqualTo(function);
    assertThat(card.method().isAnnotationPresent(LibraryFunction.class)).isTrue();
  }

  @Test
  void text_isReadPartByPart() {
    assertThat(MadeFunctions.card("cutOff").text())
        .isEqualTo(
            new Text(
                "What is left of a plank.",
                "left = length − saw",
                "Does not cover logs.",
                "",
                List.of("first // 1", "second // 2"),
                "what is left",
                "if it is a log",
                "derived"));
  }

  @Test
  void results_ofARecordAreItsPartsThatHaveColumns() {
    List<Result> results = MadeFunctions.card("cutOff").results();
    assertThat(results).extracting(Result::column).containsExactly("left_in", "kept_wood");
    assertThat(results.get(0).unit()).isEqualTo(Units.INCH);
    assertThat(results.get(1).unit()).isNull();
    assertThat(results).extracting(Result::marked).containsExactly(Marked.DOWN, Marked.NOT);
  }

  @Test
  void results_ofAnythingElseAreOne() {
    assertThat(MadeFunctions.card("stacked").results())
        .singleElement()
        .satisfies(result -> assertThat(result.column()).isEqualTo("stack_in"))
        .satisfies(result -> assertThat(result.unit()).isEqualTo(Units.INCH));
    assertThat(MadeFunctions.card("holds").results())
        .singleElement()
        .satisfies(result -> assertThat(result.column()).isEqualTo("used"))
        .satisfies(result -> assertThat(result.unit()).isEqualTo(Units.RATIO));
    assertThat(MadeFunctions.card("seen").results())
        .singleElement()
        .satisfies(result -> assertThat(result.column()).isEqualTo("seen_wood"))
        .satisfies(result -> assertThat(result.unit()).isNull());
  }

  @Test
  void index_olderThanTheClassesIsNamed() {
    assertThatIllegalStateException()
        .isThrownBy(() -> new CardReader(new Properties()).card("sheathwright.Gone#cutOff"))
        .withMessage("the index of functions is older than the classes");
  }

  /** Also where a method of that name is there without the mark. */
  @ParameterizedTest
  @ValueSource(strings = {"gone", "unmarked"})
  void function_thatIsNoneIsNotFound(String function) {
    assertThatExceptionOfType(NoSuchElementException.class)
        .isThrownBy(() -> MadeFunctions.card(function));
  }
}
