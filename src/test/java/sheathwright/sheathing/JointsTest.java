package sheathwright.sheathing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointsTest {

  private static JointBearing at(
      double center, double joint, double gap, double width, double least) {
    return Joints.jointBearing(in(center), in(joint), in(gap), in(width), in(least));
  }

  /**
   * By hand: the rafter reaches from center − 3/4 to center + 3/4; the right sheet begins 1/8
   * further.
   */
  @ParameterizedTest
  @CsvSource({
    "47.25, 48, 1.5, 0, no", // far face 48: the right sheet misses it
    "95, 96, 1.5, 0, no",
    "144.5, 144, 0.25, 1.125, no",
    "96, 95.9375, 0.6875, 0.6875, yes", // centred: (1.5 − 1/8) ÷ 2 each
    "96, 95.75, 0.5, 0.875, yes", // just enough on the left
    "96, 95.7, 0.45, 0.925, no",
    "48, 60, 1.5, 0, no", // nowhere near
    "60, 48, 0, 1.5, no"
  })
  void jointBearing_isWhatStandsOnTheRafter(
      double center, double joint, double left, double right, String ok) {
    JointBearing bearing = at(center, joint, 0.125, 1.5, 0.5);
    assertThat(bearing.left().value()).isCloseTo(left, within(1e-9));
    assertThat(bearing.right().value()).isCloseTo(right, within(1e-9));
    assertThat(bearing.ok()).hasToString(ok);
  }

  /**
   * Independent: every sixty-fourth of an inch of the rafter's face is asked which sheet covers it.
   */
  @Test
  void jointBearing_agreesWithCountingSixtyFourths() {
    Random random = new Random(20_261_125);
    for (int i = 0; i < 400; i++) {
      int center = 640 + random.nextInt(640);
      int joint = center - 160 + random.nextInt(320);
      int gap = random.nextInt(16);
      int width = 64 + 2 * random.nextInt(64);
      int left = 0;
      int right = 0;
      for (int slice = center - width / 2; slice < center + width / 2; slice++) {
        left += slice < joint ? 1 : 0;
        right += slice >= joint + gap ? 1 : 0;
      }
      JointBearing bearing = at(center / 64.0, joint / 64.0, gap / 64.0, width / 64.0, 0.5);
      assertThat(bearing.left().value()).isCloseTo(left / 64.0, within(1e-9));
      assertThat(bearing.right().value()).isCloseTo(right / 64.0, within(1e-9));
    }
  }
}
