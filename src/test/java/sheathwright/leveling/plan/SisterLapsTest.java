package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/**
 * Two sticks side by side, worked by hand on the dressed depths 3-1/2, 5-1/2, 7-1/4, 9-1/4, 11-1/4.
 */
class SisterLapsTest {

  @ParameterizedTest
  @CsvSource({
    // build-up, sister, rafter, lap, smallest that laps 2-1/2
    "1-5/8, 2x8,  2x4,  3.5,   2x6", // the whole old rafter is covered
    "1-5/8, 2x4,  2x4,  1.875, 2x6",
    "1,     2x4,  2x6,  2.5,   2x4",
    "3,     2x6,  2x6,  2.5,   2x6",
    "3-1/8, 2x6,  2x6,  2.375, 2x8",
    "9,     2x12, 2x12, 2.25,  none",
    "4,     2x4,  2x6,  0,     2x8",
  })
  void sisterLap_byHand(String buildUp, String sister, String rafter, double lap, String smallest) {
    Asked asked =
        Asked.of("sister_lap")
            .with("build_up_in", buildUp)
            .with("sister_size", sister)
            .with("rafter_size", rafter);
    assertThat(asked.number("lap_in")).isCloseTo(lap, within(1e-12));
    assertThat(asked.answer("smallest_size")).isEqualTo(smallest);
  }

  @Test
  void sisterLap_isHeldAgainstTheLeast() {
    Asked asked =
        Asked.of("sister_lap")
            .with("build_up_in", "3")
            .with("sister_size", "2x6")
            .with("rafter_size", "2x6")
            .with("least_lap_in", "2");
    assertThat(asked.number("lap_ratio")).isCloseTo(2 / 2.5, within(1e-12));
  }
}
