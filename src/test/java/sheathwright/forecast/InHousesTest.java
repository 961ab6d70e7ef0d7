package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Expected values: worked by hand from the chances given, by the rule in the class. */
class InHousesTest {

  /** By hand: 44 sheets, none seen: none 0.199, 1 to 3 0.492, more than 6 0.0976. */
  @Test
  void aRoofThatNobodyHasSeen_isSaidAsAHomeownerCounts() {
    assertThat(InHouses.words(Chances.betaBinomial(44, 1.472231, 21.794786)))
        .isEqualTo("no bad sheet in 1 house of 5; 1 to 3 in half; more than 6 in 1 of 10");
  }

  /** By hand: after 18 seen, 1 bad: 1 or 2 in 0.575, more than 5 in 0.0498; one is known. */
  @Test
  void aRoofWithOneKnown_neverSaysNone() {
    Chances after = Chances.known(1).and(Chances.betaBinomial(26, 1.472231 + 1, 21.794786 + 17));
    assertThat(InHouses.words(after))
        .isEqualTo("1 or 2 bad sheets in 3 houses of 5; more than 5 in 1 of 20");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1                     | hardly ever a bad sheet",
        "0.996 0.004           | hardly ever a bad sheet",
        "0 0 0 1               | 3 bad sheets, hardly ever more",
        "0 1                   | 1 bad sheet, hardly ever more",
        "0.95 0.05             | no bad sheet in 19 houses of 20; any at all in 1 of 20",
        "0.995 0.005           | no bad sheet in 99 houses of 100; any at all in 1 of 100",
        "0.005 0.995           | no bad sheet in 1 house of 100; one in 99 of 100",
        "0.898 0.003 0.099     | no bad sheet in 9 houses of 10; one hardly ever; more than 1 in 1 of 10",
        "0 0.6 0.3 0.1         | 1 bad sheet in 3 houses of 5; more than 2 in 1 of 10",
        "0.5 0.5               | no bad sheet in half of the houses; one in half",
        "0.2 0.3 0.3 0.1 0.1   | no bad sheet in 1 house of 5; 1 or 2 in 3 of 5; more than 3 in 1 of 10",
        "0.6 0.3 0.1           | no bad sheet in 3 houses of 5; one in 1 of 3; more than 1 in 1 of 10",
        "0.01 0.01 0.08 0.4 0.4 0.1 | no bad sheet in 1 house of 100; 1 to 3 in half; more than 4 in 1 of 10",
        "0.001 0.04 0.15 0.4 0.309 0.1 | fewer than 2 bad sheets in 1 house of 20; 2 or 3 in half; more than 4 in 1 of 10",
        "0.003 0.001 0.05 0.05 0.846 0.05 | fewer than 3 bad sheets in 1 house of 20; 3 or 4 in 9 of 10; more than 4 in 1 of 20"
      })
  void chances_areSaidAsTheNearestPlainOdds(String mass, String words) {
    double[] chances = Arrays.stream(mass.split(" +")).mapToDouble(Double::parseDouble).toArray();
    assertThat(InHouses.words(Chances.of(chances.length - 1, count -> chances[count])))
        .isEqualTo(words);
  }

  /** Between 1 of 4 and 1 of 3 the odds are 1:3 and 1:2; halfway by logarithm lies 0.2899. */
  @ParameterizedTest
  @CsvSource({"0.2895, 1 house of 4", "0.2905, 1 house of 3", "0.0051, 1 house of 100"})
  void theNearestOdds_areNearestByTheirLogarithm(double none, String said) {
    Chances chances = Chances.of(1, count -> count == 0 ? none : 1 - none);
    assertThat(InHouses.words(chances)).startsWith("no bad sheet in " + said);
  }
}
