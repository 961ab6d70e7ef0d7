package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheathwright.leveling.string.Profile.Stretch;

/** By hand, on squared paper: up to 2 at 10 in, down to -2 at 20 in. */
class ProfileTest {

  private static final Profile LINE =
      new Profile(new double[] {0, 10, 20}, new double[] {0, 2, -2});

  @Test
  void heights_areStraightBetweenPlaces_andLevelBeyondThem() {
    assertThat(LINE.at(-5)).isZero();
    assertThat(LINE.at(0)).isZero();
    assertThat(LINE.at(5)).isEqualTo(1);
    assertThat(LINE.at(10)).isEqualTo(2);
    assertThat(LINE.at(15)).isZero();
    assertThat(LINE.at(17.5)).isEqualTo(-1);
    assertThat(LINE.at(25)).isEqualTo(-2);
    assertThat(LINE.greatest()).isEqualTo(2);
    assertThat(LINE.least()).isEqualTo(-2);
    assertThat(LINE.length()).isEqualTo(20);
    Profile moved = new Profile(new double[] {5, 9}, new double[] {1, 3});
    assertThat(moved.at(2)).isEqualTo(1);
    assertThat(moved.length()).isEqualTo(4);
  }

  @Test
  void itReaches_fromItsFirstPlaceToItsLast() {
    assertThat(LINE.reaches(0)).isTrue();
    assertThat(LINE.reaches(20)).isTrue();
    assertThat(LINE.reaches(-0.01)).isFalse();
    assertThat(LINE.reaches(20.01)).isFalse();
    assertThat(new Profile(new double[0], new double[0]).reaches(0)).isFalse();
  }

  @Test
  void placesInside_leaveTheEndsOut() {
    assertThat(LINE.inside(new Stretch(0, 20))).containsExactly(10.0);
    assertThat(LINE.inside(new Stretch(-1, 21))).containsExactly(0.0, 10.0, 20.0);
    assertThat(LINE.inside(new Stretch(10, 20))).isEmpty();
    assertThat(LINE.inside(new Stretch(0, 10))).isEmpty();
  }

  @Test
  void stretchesAboveALevel_endWhereItIsCrossed() {
    Stretch whole = new Stretch(0, 20);
    assertThat(whole.length()).isEqualTo(20);
    assertThat(new Stretch(5, 9).length()).isEqualTo(4);
    assertThat(LINE.above(0, whole)).containsExactly(new Stretch(0, 15));
    assertThat(LINE.above(1, whole)).containsExactly(new Stretch(5, 12.5));
    assertThat(LINE.above(-3, whole)).containsExactly(whole);
    assertThat(LINE.above(2, whole)).isEmpty();
    assertThat(LINE.above(1, new Stretch(6, 20))).containsExactly(new Stretch(6, 12.5));
    assertThat(LINE.above(1, new Stretch(0, 11))).containsExactly(new Stretch(5, 11));
    assertThat(LINE.above(-2, whole)).as("it ends on the level").containsExactly(whole);
    assertThat(new Profile(new double[] {0, 10, 20}, new double[] {-1, 0, -1}).above(0, whole))
        .as("it only touches the level")
        .isEmpty();
    Profile waves = new Profile(new double[] {0, 10, 20, 30, 40}, new double[] {2, 0, 2, 0, 2});
    assertThat(waves.above(1, new Stretch(0, 40)))
        .containsExactly(new Stretch(0, 5), new Stretch(15, 25), new Stretch(35, 40));
  }
}
