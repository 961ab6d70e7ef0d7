package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;

/** What a function returns is what its columns announce. */
class ResultsTest {

  static Stream<Card> cards() {
    return Catalog.shipped().cards().stream();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void allowedArguments_areNotRefused(Card card) {
    assertThat(Calls.refusals(card, StartingValues.of(card))).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void everyResult_carriesTheNameOfItsColumn(Card card) {
    assertThat(card.answer(StartingValues.of(card)))
        .extracting(Traced::name)
        .isEqualTo(card.results().stream().map(Result::column).toList());
  }

  @ParameterizedTest
  @MethodSource("cards")
  void rule17_everyResult_isInTheUnitOfItsColumn(Card card) {
    List<Traced> answer = card.answer(StartingValues.of(card));
    for (int i = 0; i < answer.size(); i++) {
      Result result = card.results().get(i);
      if (result.unit() == null) {
        assertThat(answer.get(i)).isInstanceOf(Choice.class);
      } else {
        assertThat(((Figure<?>) answer.get(i)).unit()).as(result.column()).isEqualTo(result.unit());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cards")
  void everyResult_saysWhereItComesFrom(Card card) {
    assertThat(card.answer(StartingValues.of(card)))
        .allSatisfy(result -> assertThat(result.source()).isNotNull())
        .anySatisfy(result -> assertThat(result.source().toString()).isNotBlank());
  }
}
