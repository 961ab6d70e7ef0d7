package sheathwright.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.catalog.Catalog;

/** People times hours over hours, by hand. */
class OpenAreaTest {

  private static Asked day(String crew, String hours, String efficiency, String square) {
    return Asked.of("open_area")
        .with("crew", crew)
        .with("hours", hours)
        .with("efficiency_pct", efficiency)
        .with("hours_per_square", square);
  }

  @ParameterizedTest
  @CsvSource({"4, 8, 75, 3, 8", "3, 9.5, 80, 2.5, 9.12", "1, 0, 100, 4, 0", "2, 10, 50, 0.5, 20"})
  void openArea_isTheWorkOfTheDayOverTheWorkOfASquare(
      String crew, String hours, String efficiency, String square, double squares) {
    assertThat(day(crew, hours, efficiency, square).number("squares_per_day"))
        .isCloseTo(squares, within(1e-9));
  }

  @Test
  void openArea_refusesHalfAPersonAndNoTimeAtAll() {
    assertThat(day("2.5", "8", "75", "3").refusal()).isPresent();
    assertThat(day("2", "8", "75", "0").refusal()).isPresent();
  }

  @Test
  void openArea_isFoundByTheWordsOfTheTrade() {
    assertThat(Catalog.shipped().about(java.util.List.of("open", "today")))
        .first()
        .satisfies(card -> assertThat(card.name()).isEqualTo("open_area"));
  }
}
