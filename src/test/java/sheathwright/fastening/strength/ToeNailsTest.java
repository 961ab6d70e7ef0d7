package sheathwright.fastening.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Asked;

class ToeNailsTest {

  private static Asked toe(double length, double side) {
    return Asked.of("toe_nail")
        .with("length_in", Double.toString(length))
        .with("side_thickness_in", Double.toString(side));
  }

  /** NDS 2018 commentary C12.5.4 worked for 8d and 16d common nails; secondary source. */
  @ParameterizedTest
  @CsvSource({"2.5, 1.332, 1.538", "3.5, 1.864, "})
  void toeNail_isTheWorkedOne(double length, double mainBearing, Double penetration) {
    assertThat(toe(length, 1.5).number("main_bearing_in")).isCloseTo(mainBearing, within(0.001));
    if (penetration != null) {
      assertThat(toe(length, 1.5).number("penetration_in")).isCloseTo(penetration, within(0.001));
    }
  }

  /** A right triangle: from the start, L/3 above the joint, at 30 degrees to the side member. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 2.5, 3, 4.5})
  void toeNail_isATriangle(double length) {
    double toTheJoint = length / 3 / Math.cos(Math.toRadians(30));
    assertThat(toe(length, 1.5).number("penetration_in"))
        .isCloseTo(length - toTheJoint, within(1e-9));
    double downInAll = length * Math.cos(Math.toRadians(30));
    assertThat(toe(length, 1.5).number("main_bearing_in"))
        .isCloseTo(downInAll - length / 3, within(1e-9));
  }

  @Test
  void aThinSide_bearsByItsThicknessAlone() {
    assertThat(toe(3, 0.75).number("side_bearing_in")).isEqualTo(0.75);
    assertThat(toe(3, 1.5).number("side_bearing_in")).isEqualTo(1);
  }
}
