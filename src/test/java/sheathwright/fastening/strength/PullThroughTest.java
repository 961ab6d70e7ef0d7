package sheathwright.fastening.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class PullThroughTest {

  private static double pulled(String head, String gravity, String thickness) {
    return Asked.of("nail_pull_through")
        .with("head_diameter_in", head)
        .with("specific_gravity", gravity)
        .with("thickness_in", thickness)
        .number("pull_through_lb");
  }

  /** Worked by others from the same remembered equations. */
  @ParameterizedTest(name = "head {0} in, G {1}, panel {2} in")
  @CsvFileSource(resources = "pull-through-values.csv", useHeadersInDisplayName = true)
  void nailPullThrough_isTheWorkedValue(
      String head, String gravity, String thickness, double pounds) {
    assertThat(pulled(head, gravity, thickness)).isCloseTo(pounds, within(0.051));
  }

  @ParameterizedTest(name = "head {0} in, G {1}, panel {2} in")
  @CsvSource({
    "0.281, 0.50, 7/16, 66.6",
    "0.281, 0.42, 15/32, 50.4",
    "0.281, 0.42, 19/32, 63.8",
    "0.281, 0.50, 19/32, 90.4"
  })
  void nailPullThrough_isTheWorkedExample(
      String head, String gravity, String thickness, double pounds) {
    assertThat(pulled(head, gravity, thickness)).isCloseTo(pounds, within(0.2));
  }

  /** 690 × 2.5 = 1725: the two equations meet at 2.5 head diameters, and then nothing is added. */
  @Test
  void nailPullThrough_growsToTwoAndAHalfHeadDiametersAndNoFurther() {
    double there = pulled("0.28", "0.5", "0.7");
    assertThat(pulled("0.28", "0.5", "0.69999")).isCloseTo(there, within(0.01)).isLessThan(there);
    assertThat(pulled("0.28", "0.5", "0.70001")).isCloseTo(there, within(1e-9));
    assertThat(pulled("0.28", "0.5", "3")).isCloseTo(there, within(1e-9));
    assertThat(pulled("0.28", "0.5", "0.35")).isCloseTo(there / 2, within(1e-9));
  }
}
