package sheathwright.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * By hand: an L of 120 by 72 in less its upper right 60 by 36 is a rectangle of 4,320 sq in about
 * (60, 18) and one of 2,160 about (30, 54), so 6,480 about (50, 30).
 */
class RegionTest {

  /** A little more than a step of an inch's thousandth, and as much as tells two sides apart. */
  private static final double HAIR = 1.0 / 512;

  private static final Region ELL =
      round(
          6480,
          new Spot(0, 0),
          new Spot(120, 0),
          new Spot(120, 36),
          new Spot(60, 36),
          new Spot(60, 72),
          new Spot(0, 72));

  private static Region round(double area, Spot... corners) {
    Box bounds = new Box(corners[0].x(), corners[0].y(), corners[0].x(), corners[0].y());
    for (Spot each : corners) {
      bounds = bounds.with(new Box(each.x(), each.y(), each.x(), each.y()));
    }
    return new Region(List.of(corners), List.of(), area, bounds);
  }

  private static Region rectangle(double left, double bottom, double right, double top) {
    return round((right - left) * (top - bottom), corners(left, bottom, right, top));
  }

  private static Spot[] corners(double left, double bottom, double right, double top) {
    return new Spot[] {
      new Spot(left, bottom), new Spot(right, bottom), new Spot(right, top), new Spot(left, top)
    };
  }

  @Test
  void middle_isTheMiddleOfTheArea_eitherWayRound() {
    assertThat(ELL.middle().x()).isCloseTo(50, within(1e-9));
    assertThat(ELL.middle().y()).isCloseTo(30, within(1e-9));
    Region back =
        round(6, new Spot(10, 20), new Spot(10, 23), new Spot(14, 20)); // a third from each side
    assertThat(back.middle().x()).isCloseTo(10 + 4 / 3.0, within(1e-9));
    assertThat(back.middle().y()).isCloseTo(21, within(1e-9));
  }

  @Test
  void onlyARectangle_fillsItsBounds() {
    assertThat(rectangle(5, 5, 101, 53).isRectangle()).isTrue();
    assertThat(ELL.isRectangle()).isFalse();
    Region touched = rectangle(0, 0, 10, 10);
    assertThat(new Region(touched.corners(), List.of(), 99.96, touched.bounds()).isRectangle())
        .isTrue();
    assertThat(new Region(touched.corners(), List.of(), 100 - 0.05, touched.bounds()).isRectangle())
        .as("less than 0.05 sq in only touches, and this is no less")
        .isFalse();
  }

  @Test
  void sharedSide_isWhatTwoPartsHaveInCommon() {
    assertThat(ELL.sharedSide(rectangle(60, 36, 120, 72))).as("60 and 36").isEqualTo(96);
    assertThat(rectangle(60, 36, 120, 72).sharedSide(ELL)).isEqualTo(96);
    assertThat(ELL.sharedSide(rectangle(120, 12, 168, 60))).isEqualTo(24);
    assertThat(ELL.sharedSide(rectangle(-48, 12, 0, 60))).isEqualTo(48);
    assertThat(ELL.sharedSide(rectangle(12, 72, 84, 80))).isEqualTo(48);
    assertThat(ELL.sharedSide(rectangle(120, 36, 168, 60))).as("a corner").isZero();
    assertThat(ELL.sharedSide(rectangle(121, 0, 168, 36))).as("an inch between").isZero();
    assertThat(ELL.sharedSide(rectangle(0, -40, 120, -1))).as("an inch between").isZero();
  }

  @Test
  void sharedSide_countsAroundAHole() {
    Region holed =
        new Region(
            ELL.corners(),
            List.of(List.of(corners(24, 12, 36, 24))),
            6480 - 144,
            new Box(0, 0, 120, 72));
    assertThat(holed.sharedSide(rectangle(24, 12, 36, 24))).isEqualTo(48);
  }

  @Test
  void sharedSide_leavesOutWhatSlants() {
    Region left = round(150, new Spot(0, 0), new Spot(20, 0), new Spot(10, 10), new Spot(0, 10));
    Region right = round(150, new Spot(20, 0), new Spot(30, 0), new Spot(30, 10), new Spot(10, 10));
    assertThat(left.sharedSide(right)).isZero();
  }

  /** Corners lie on steps of 1/1024 in: one step aside still counts as touching, two do not. */
  @Test
  void sharedSide_takesOneStepAside_butNotTwo() {
    Region one = rectangle(0, 0, 10, 10);
    assertThat(one.sharedSide(rectangle(10 + HAIR / 2, 0, 20, 10))).isEqualTo(10);
    assertThat(one.sharedSide(rectangle(10 + HAIR, 0, 20, 10))).isZero();
    assertThat(one.sharedSide(rectangle(0, 10 + HAIR / 2, 10, 20))).isEqualTo(10);
    assertThat(one.sharedSide(rectangle(0, 10 + HAIR, 10, 20))).isZero();
    Region slanted =
        round(100, new Spot(0, 0), new Spot(10 + HAIR, 0), new Spot(10, 10), new Spot(0, 10));
    assertThat(slanted.sharedSide(rectangle(10, -5, 20, 15))).as("its end slants").isZero();
    assertThat(rectangle(10, -5, 20, 15).sharedSide(slanted)).isZero();
    Region tilted =
        round(100, new Spot(0, 0), new Spot(10, 0), new Spot(10, 10), new Spot(0, 10 + HAIR));
    assertThat(tilted.sharedSide(rectangle(-5, 10, 15, 20))).as("its top slants").isZero();
    assertThat(rectangle(-5, 10, 15, 20).sharedSide(tilted)).isZero();
  }

  @Test
  void outline_isThePartWithItsHoles() {
    Region holed =
        new Region(
            ELL.corners(),
            List.of(List.of(corners(24, 12, 36, 24))),
            6480 - 144,
            new Box(0, 0, 120, 72));
    assertThat(holed.outline().area()).isCloseTo(6336, within(1e-9));
    assertThat(holed.outline().bounds()).isEqualTo(new Box(0, 0, 120, 72));
    assertThat(holed.outline().covers(new Box(20, 10, 30, 14))).isFalse();
  }
}
