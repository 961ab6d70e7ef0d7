package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.leveling.target.TargetBruteForce.Whole;

/** Random readings, a few at a time, against every corner tried in whole numbers. */
class TargetBruteForceTest {

  private static final Offset<Double> MILLIONTH = within(1e-6);
  private static final double PLACES = 1.0 / 12; // units are feet
  private static final double HEIGHTS = 16;

  /** Few places and heights, so that ties, lines and doubled places are common. */
  private static List<Whole> readings(Random random, boolean isBounded) {
    int count = 1 + random.nextInt(7);
    int wide = 1 + random.nextInt(6);
    int deep = 1 + random.nextInt(20);
    List<Whole> readings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean isHeld = isBounded && random.nextInt(2) == 0;
      long least = isHeld ? random.nextInt(4) : 0;
      readings.add(
          new Whole(
              random.nextInt(wide),
              random.nextInt(8),
              -random.nextInt(deep),
              least,
              isHeld ? least + random.nextInt(4) : -1));
    }
    return readings;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void plane_isTheBestOfAllCorners(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      assertThatAgrees(readings(random, false), -1);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14})
  void plane_isTheBestOfAllCorners_withinBounds(long seed) {
    Random random = new Random(seed);
    int served = 0;
    for (int i = 0; i < 60; i++) {
      long cap = random.nextInt(3) == 0 ? 3 + random.nextInt(12) : -1;
      served += assertThatAgrees(readings(random, true), cap) ? 1 : 0;
    }
    assertThat(served).isBetween(10, 50); // both kinds were tried
  }

  private static boolean assertThatAgrees(List<Whole> readings, long cap) {
    List<TargetReading> inches =
        readings.stream().map(reading -> reading.inches(PLACES, HEIGHTS)).toList();
    double most = cap < 0 ? TargetReading.UNLIMITED : cap / HEIGHTS;
    boolean isServed = true;
    for (TargetObjective objective : TargetObjective.values()) {
      double[] best = TargetBruteForce.best(readings, objective, cap);
      String said = objective + " " + readings + " " + cap;
      if (best == null) {
        NoTargetException none =
            catchThrowableOfType(
                NoTargetException.class, () -> TargetPlane.over(inches, objective, most));
        assertThat(none).as(said).isNotNull();
        assertThat(none.lacking())
            .as(said)
            .isCloseTo(TargetBruteForce.lacking(readings, cap) / HEIGHTS, MILLIONTH);
        isServed = false;
      } else {
        TargetPlane plane = TargetPlane.over(inches, objective, most);
        assertThat(plane.total()).as(said).isCloseTo(best[0] / HEIGHTS, MILLIONTH);
        assertThat(plane.largest()).as(said).isCloseTo(best[1] / HEIGHTS, MILLIONTH);
        double slope = PLACES / HEIGHTS;
        assertThat(Math.abs(plane.across()))
            .as(said)
            .isCloseTo(Math.abs(best[2]) * slope, within(1e-9));
        assertThat(Math.abs(plane.up()))
            .as(said)
            .isCloseTo(Math.abs(best[3]) * slope, within(1e-9));
      }
    }
    return isServed;
  }
}
