package sheathwright.framing.nailed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.YesNo;

/** A nail's adjusted value by hand arithmetic, and both sides of what is allowed. */
class AdjustedLateralsTest {

  private static ListedNail nail(double penetration) {
    return ListedNail.lateral(lb(100)).penetration(in(penetration)).diameter(in(0.15));
  }

  private static Figure<Force> adjusted(double penetration, double duration, YesNo wet) {
    return AdjustedLaterals.adjustedLateral(nail(penetration), number(duration), wet);
  }

  @ParameterizedTest
  @CsvSource({
    // 6 D is 0.9 in, 10 D is 1.5 in
    "0.9,  1,    60",
    "1.2,  1,    80",
    "1.5,  1,    100",
    "2.5,  1,    100",
    "2.5,  1.6,  160",
    "1.2,  1.25, 100",
    "1.2,  0.9,  72",
  })
  void penetration_countsUpToTenDiameters(double penetration, double duration, double expected) {
    assertThat(adjusted(penetration, duration, NO).value()).isCloseTo(expected, within(1e-9));
    assertThat(adjusted(penetration, duration, YES).value())
        .isCloseTo(0.7 * expected, within(1e-9));
  }

  @Test
  void lessThanSixDiameters_isRefused() {
    assertThat(adjusted(0.899, 1, NO).refusal().orElseThrow().reason())
        .startsWith("the nail reaches less than 6 diameters into the far piece");
  }

  @Test
  void penetrationThatIsCountedAlready_isNotCountedTwice() {
    Figure<Force> once =
        AdjustedLaterals.adjustedLateral(nail(0.9).penetrationCounted(YES), number(1.15), NO);
    assertThat(once.value()).isCloseTo(115, within(1e-9));
    assertThat(
            AdjustedLaterals.adjustedLateral(nail(0.8).penetrationCounted(YES), number(1.15), NO)
                .refusal())
        .isPresent();
  }

  @Test
  void loadDuration_isRefusedAboveWhatNailsMayHave() {
    assertThat(adjusted(1.5, 2, NO).refusal().orElseThrow().reason())
        .startsWith("load_duration is 2; it must be from 0.9 to 1.6");
  }
}
