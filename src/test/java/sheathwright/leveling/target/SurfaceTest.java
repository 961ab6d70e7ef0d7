package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import sheathwright.roof.Spot;

/** A surface through stations, against plain geometry: a tilted plane is known everywhere. */
class SurfaceTest {

  private static final double DIGITS = 1e-9;
  private static final DoubleBinaryOperator TILTED = (x, y) -> 0.25 + x / 64 - y / 128;

  @Test
  void aTiltedPlane_isItselfBetweenUnevenStations() {
    Random random = new Random(7);
    Surface surface = Surface.through(rafters(random, TILTED));
    for (int i = 0; i < 500; i++) {
      Spot place = new Spot(random.nextDouble() * 96, random.nextDouble() * 144);
      assertThat(surface.at(place).orElseThrow())
          .isCloseTo(TILTED.applyAsDouble(place.x(), place.y()), within(DIGITS));
    }
  }

  /** 0.25 + x/64 − y/128 = 0.5 runs from (16, 0) to (88, 144): √(72² + 144²) long. */
  @Test
  void itsContour_isAStraightLineOfTheRightLength() {
    Surface surface = Surface.through(rafters(new Random(8), TILTED));
    double length = 0;
    for (Surface.Line line : surface.lines(0.5)) {
      length += Math.hypot(line.to().x() - line.from().x(), line.to().y() - line.from().y());
      for (Spot end : List.of(line.from(), line.to())) {
        assertThat(TILTED.applyAsDouble(end.x(), end.y())).isCloseTo(0.5, within(DIGITS));
      }
    }
    assertThat(length).isCloseTo(Math.hypot(72, 144), within(1e-6));
  }

  /**
   * Euler: joining the stations of two rafters of m and n takes m + n − 2 triangles, none missed.
   */
  @Test
  void everyContour_isWithoutGaps() {
    Random random = new Random(9);
    Surface surface = Surface.through(rafters(random, (x, y) -> random.nextDouble()));
    List<Spot> ends = new ArrayList<>();
    surface.lines(0.5).forEach(line -> ends.addAll(List.of(line.from(), line.to())));
    for (Spot end : ends) {
      boolean isOnTheRim = end.x() < DIGITS || end.x() > 96 - DIGITS || onEaveOrRidge(end);
      long meeting =
          ends.stream()
              .filter(other -> Math.hypot(other.x() - end.x(), other.y() - end.y()) < DIGITS)
              .count();
      assertThat(meeting).isEqualTo(isOnTheRim ? 1 : 2);
    }
    assertThat(ends).hasSizeGreaterThan(10);
  }

  @Test
  void beyondTheStations_thereIsNothing() {
    Surface surface = Surface.through(rafters(new Random(10), TILTED));
    assertThat(surface.at(new Spot(96.5, 70))).isEmpty();
    assertThat(surface.at(new Spot(50, 144.5))).isEmpty();
    assertThat(Surface.through(rafters(new Random(1), TILTED).subList(0, 1)).isEmpty()).isTrue();
  }

  private static boolean onEaveOrRidge(Spot end) {
    return end.y() < DIGITS || end.y() > 144 - DIGITS;
  }

  /** Five rafters at 24 in, each with stations at both ends and some between. */
  private static List<List<Surface.Height>> rafters(Random random, DoubleBinaryOperator height) {
    List<List<Surface.Height>> rafters = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      double x = 24 * i;
      List<Surface.Height> stations = new ArrayList<>();
      stations.add(at(x, 144, height));
      stations.add(at(x, 0, height));
      for (int j = random.nextInt(5); j > 0; j--) {
        stations.add(at(x, 1 + random.nextDouble() * 142, height));
      }
      rafters.add(stations);
    }
    return rafters;
  }

  private static Surface.Height at(double x, double y, DoubleBinaryOperator height) {
    return new Surface.Height(new Spot(x, y), height.applyAsDouble(x, y));
  }
}
