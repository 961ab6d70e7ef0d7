package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.RefusedException;

/** What must hold of every target, whatever the readings. */
class TargetPropertiesTest {

  private static final double NONE = TargetReading.UNLIMITED;
  private static final Offset<Double> NOISE = within(1e-9);

  private static List<List<TargetReading>> roofs() {
    List<List<TargetReading>> roofs = new ArrayList<>();
    for (int seed = 1; seed <= 12; seed++) {
      roofs.add(TargetReadings.sagged(new Random(seed), 1 + seed, 14 - seed));
    }
    return roofs;
  }

  private static List<TargetReading> each(
      List<TargetReading> readings, UnaryOperator<TargetReading> change) {
    return readings.stream().map(change).toList();
  }

  private static TargetReading moved(TargetReading reading, double x, double y, double z) {
    return new TargetReading(reading.name(), x, y, z, reading.least(), reading.most());
  }

  private static void assertSame(List<Double> one, List<Double> other) {
    for (int i = 0; i < one.size(); i++) {
      assertThat(other.get(i)).isCloseTo(one.get(i), NOISE);
    }
  }

  @ParameterizedTest
  @EnumSource
  void raisingTheString_changesNoBuildUp(TargetObjective objective) {
    for (List<TargetReading> roof : roofs()) {
      TargetPlane plane = TargetPlane.over(roof, objective, NONE);
      TargetPlane raised =
          TargetPlane.over(
              each(roof, one -> moved(one, one.x(), one.y(), one.z() - 3.375)), objective, NONE);
      assertSame(plane.buildUps(), raised.buildUps());
      assertThat(raised.height()).isCloseTo(plane.height() - 3.375, NOISE);
    }
  }

  @ParameterizedTest
  @EnumSource
  void theRoofSeenFromTheOtherSide_hasTheSameBuildUps(TargetObjective objective) {
    for (List<TargetReading> roof : roofs()) {
      TargetPlane plane = TargetPlane.over(roof, objective, NONE);
      TargetPlane mirrored =
          TargetPlane.over(
              each(roof, one -> moved(one, 100 - one.x(), one.y(), one.z())), objective, NONE);
      assertSame(plane.buildUps(), mirrored.buildUps());
      assertThat(mirrored.across()).isCloseTo(-plane.across(), NOISE);
      assertThat(mirrored.up()).isCloseTo(plane.up(), NOISE);
    }
  }

  @ParameterizedTest
  @EnumSource
  void theOrderOfReadings_doesNotMatter(TargetObjective objective) {
    for (List<TargetReading> roof : roofs()) {
      List<TargetReading> shuffled = new ArrayList<>(roof);
      Collections.shuffle(shuffled, new Random(roof.size()));
      TargetPlane plane = TargetPlane.over(roof, objective, NONE);
      TargetPlane again = TargetPlane.over(shuffled, objective, NONE);
      for (int i = 0; i < roof.size(); i++) {
        assertThat(again.buildUps().get(shuffled.indexOf(roof.get(i))))
            .isCloseTo(plane.buildUps().get(i), NOISE);
      }
    }
  }

  /** Bounds that the plane meets anyway leave it where it is. */
  @ParameterizedTest
  @EnumSource
  void boundsThatAreMet_changeNothing(TargetObjective objective) {
    for (List<TargetReading> roof : roofs()) {
      TargetPlane plane = TargetPlane.over(roof, objective, NONE);
      List<TargetReading> bounded = new ArrayList<>();
      for (int i = 0; i < roof.size(); i++) {
        double buildUp = plane.buildUps().get(i);
        bounded.add(roof.get(i).within(buildUp / 2, buildUp + 1.0 / 16));
      }
      assertSame(
          plane.buildUps(), TargetPlane.over(bounded, objective, plane.largest() + 1).buildUps());
    }
  }

  /** Wood that lies under the plane by no more than the largest build-up: still the largest. */
  @Test
  void aReadingUnderThePlane_leavesTheLeastLargest() {
    for (List<TargetReading> roof : roofs()) {
      TargetPlane plane = TargetPlane.over(roof, TargetObjective.LARGEST, NONE);
      List<TargetReading> more = new ArrayList<>(roof);
      more.add(TargetReading.of("new", 7, 31, plane.at(7, 31) - plane.largest() / 2));
      assertThat(TargetPlane.over(more, TargetObjective.LARGEST, NONE).largest())
          .isCloseTo(plane.largest(), within(1e-7));
    }
  }

  @Test
  void eachObjective_isLeastUnderItsOwnPlane_andLinesTakeNoMore() {
    for (List<TargetReading> roof : roofs()) {
      TargetPlane total = TargetPlane.over(roof, TargetObjective.TOTAL, NONE);
      TargetPlane largest = TargetPlane.over(roof, TargetObjective.LARGEST, NONE);
      assertThat(total.total()).isLessThanOrEqualTo(largest.total() + 1e-9);
      assertThat(largest.largest()).isLessThanOrEqualTo(total.largest() + 1e-9);
      assertThat(TargetLines.over(roof, TargetObjective.TOTAL, NONE).total())
          .isLessThanOrEqualTo(total.total() + 1e-9);
      assertThat(TargetLines.over(roof, TargetObjective.LARGEST, NONE).largest())
          .isLessThanOrEqualTo(largest.largest() + 1e-9);
    }
  }

  /** Four corners that lie in one plane tie the surface into just that plane, to the last digit. */
  @ParameterizedTest
  @EnumSource
  void cornersTiedIntoOnePlane_giveThatPlane(TargetObjective objective) {
    for (List<TargetReading> roof : roofs()) {
      double endX = roof.get(roof.size() - 1).x();
      double endY = roof.get(roof.size() - 1).y();
      List<TargetReading> tied =
          each(
              roof,
              one -> {
                double above = 5 + 0.003 * one.x() - 0.0007 * one.y() - one.z();
                boolean isCorner =
                    (one.x() == 0 || one.x() == endX) && (one.y() == 0 || one.y() == endY);
                double exact = Math.rint(above * 1e9) / 1e9;
                return isCorner ? one.within(exact, exact) : one;
              });
      TargetPlane plane = TargetPlane.over(tied, objective, NONE);
      assertThat(plane.at(17, 40)).isCloseTo(5 + 0.003 * 17 - 0.0007 * 40, within(1e-7));
    }
  }

  /** Tie-ins that another program wrote with eight decimals are still those of one plane. */
  @ParameterizedTest
  @EnumSource
  void tieInsThatWereRounded_doNotClash(TargetObjective objective) {
    for (List<TargetReading> roof : roofs()) {
      List<TargetReading> tied =
          each(
              roof,
              one -> {
                double above = 9 + one.x() / 7030 - one.y() / 3510 - one.z();
                double rounded = Math.rint(above * 1e8) / 1e8;
                return one.name().endsWith("/3") ? one : one.within(rounded, rounded);
              });
      TargetPlane plane = TargetPlane.over(tied, objective, NONE);
      assertThat(plane.at(17, 40)).isCloseTo(9 + 17 / 7030.0 - 40 / 3510.0, within(1e-6));
    }
  }

  @ParameterizedTest
  @EnumSource
  void aFlatRoof_needsNothing_howeverManyReadings(TargetObjective objective) {
    List<TargetReading> flat =
        each(
            TargetReadings.sagged(new Random(1), 60, 12),
            one -> moved(one, one.x(), one.y(), -0.4375));
    TargetPlane plane = TargetPlane.over(flat, objective, 0);
    assertThat(plane.buildUps()).containsOnly(0.0);
    assertThat(plane.across()).isZero();
    assertThat(plane.up()).isZero();
    assertThat(plane.height()).isEqualTo(-0.4375);
  }

  @ParameterizedTest
  @EnumSource
  void oneReading_liesUnderALevelPlane(TargetObjective objective) {
    TargetPlane plane = TargetPlane.over(List.of(TargetReading.of("a", 5, 7, -2)), objective, NONE);
    assertThat(plane.buildUps()).containsExactly(0.0);
    assertThat(plane.at(1000, 1000)).isEqualTo(-2);
  }

  /** Places that differ by the noise of arithmetic are one rafter, not two on a cliff. */
  @Test
  void noiseInAPlace_doesNotTiltThePlane() {
    double x = 0.1 + 0.2;
    TargetPlane plane =
        TargetPlane.over(
            List.of(
                TargetReading.of("a", x, 0, 0),
                TargetReading.of("b", 0.3, 72, -1),
                TargetReading.of("c", x, 144, 0.5)),
            TargetObjective.TOTAL,
            NONE);
    assertThat(plane.across()).isZero();
    assertThat(plane.total()).isCloseTo(1.25, within(1e-9));
  }

  /** Readings along a hip, whose places are rounded: the plane is not tilted aside to miss one. */
  @Test
  void readingsAlongAHip_takeAsLittleAsOnARafter() {
    double[] drops = {0, -0.625, -0.875, -0.5, 0.125};
    List<TargetReading> hip = new ArrayList<>();
    for (int i = 0; i < drops.length; i++) {
      hip.add(TargetReading.of("hip", 24 * i, Math.rint(36e5 * i / 1.1) / 1e5, drops[i]));
    }
    for (TargetObjective objective : TargetObjective.values()) {
      TargetPlane plane = TargetPlane.over(hip, objective, NONE);
      assertThat(plane.total()).isCloseTo(35 / 16.0, within(1e-6)); // one straight line: case P04
      assertThat(plane.across()).isCloseTo(0, NOISE);
    }
  }

  /** A height read against another datum, and a plane that is steep against it. */
  @Test
  void heightsFarFromTheString_areAsExact() {
    for (List<TargetReading> roof : roofs()) {
      double across = 0.25;
      List<TargetReading> far =
          each(roof, one -> moved(one, one.x(), one.y(), one.z() + 500 + across * one.x()));
      TargetPlane plane = TargetPlane.over(roof, TargetObjective.LARGEST, NONE);
      assertThat(TargetPlane.over(far, TargetObjective.LARGEST, NONE).largest())
          .isCloseTo(plane.largest(), NOISE);
    }
  }

  @Test
  void wrongReadings_areRefused() {
    assertThatThrownBy(() -> TargetPlane.over(List.of(), TargetObjective.TOTAL, NONE))
        .isInstanceOf(RefusedException.class)
        .hasMessage("0 readings are given; it must be from 1 to 20000");
    assertThatThrownBy(() -> TargetReading.of("a", 0, Double.NaN, 0))
        .isInstanceOf(RefusedException.class)
        .hasMessage("a: its place and height must be numbers");
    assertThatThrownBy(() -> TargetReading.of("a", 0, 0, 0).within(2, 1))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("from 2 to 1 in");
    assertThatThrownBy(() -> TargetReading.of("a", 0, 0, 0).within(-1, 1))
        .isInstanceOf(RefusedException.class);
    assertThatThrownBy(
            () ->
                TargetPlane.over(
                    List.of(TargetReading.of("a", 0, 0, 0)), TargetObjective.TOTAL, -1))
        .isInstanceOf(RefusedException.class)
        .hasMessage("the cap on build-up is -1 in; it must be 0 or more");
  }
}
