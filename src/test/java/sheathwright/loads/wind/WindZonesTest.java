package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.RefusedException;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Spot;

class WindZonesTest {

  private static final double WIDTH = 36;

  /** Corner, then zone by distances on the flat, without any cutting. */
  private static String zoneByDistance(
      LoadEdition edition, RoofShape roof, WindZones.Shape plane, double x, double y) {
    double depth = plane.slopeLength() / Math.hypot(1, plane.riseIn12() / 12);
    double v = y / Math.hypot(1, plane.riseIn12() / 12);
    boolean atEave = v < WIDTH;
    boolean hasRidge = plane.eave() > plane.leftLean() + plane.rightLean();
    boolean atRidge = hasRidge && depth - v < WIDTH;
    boolean atEnd = x < WIDTH || plane.eave() - x < WIDTH;
    boolean is2016 = edition == LoadEdition.ASCE7_16;
    if (roof == RoofShape.GABLE) {
      String corner = atRidge ? "3r" : atEave ? "3e" : "2n";
      String middle = atRidge ? "2r" : atEave ? "2e" : "1";
      String zone = atEnd ? corner : middle;
      return is2016 ? zone : zone.substring(0, 1);
    }
    double left = distance(x, v, plane.leftLean(), depth);
    double right = distance(plane.eave() - x, v, plane.rightLean(), depth);
    boolean atHip = left < WIDTH || right < WIDTH;
    String zone = atEave ? atEnd ? "3" : "2e" : atHip || atRidge ? "2r" : "1";
    return is2016 ? zone : zone.substring(0, 1);
  }

  /** From a point to the line that begins at the corner and leans in. */
  private static double distance(double x, double v, double lean, double depth) {
    return Math.abs(x * depth - v * lean) / Math.hypot(lean, depth);
  }

  @ParameterizedTest(name = "{0} {1} {2} by {3}, leans {4} and {5}")
  @CsvSource({
    "ASCE7_10, GABLE, 480, 200, 0, 0, 6",
    "ASCE7_16, GABLE, 480, 200, 0, 0, 6",
    "ASCE7_22, GABLE, 300, 150, 0, 0, 9",
    "ASCE7_10, HIP, 480, 180, 160, 160, 6",
    "ASCE7_16, HIP, 480, 180, 160, 160, 6",
    "ASCE7_22, HIP, 320, 200, 160, 160, 9",
  })
  void parts_areThoseThatDistancesTell(
      LoadEdition edition,
      RoofShape roof,
      double eave,
      double slope,
      double left,
      double right,
      double rise) {
    var plane = new WindZones.Shape(eave, slope, left, right, rise);
    List<WindZones.Part> parts = WindZones.of(edition, roof, plane, WIDTH);
    double whole = (eave + (eave - left - right)) / 2 * slope;
    assertThat(parts.stream().mapToDouble(WindZones.Part::area).sum())
        .isCloseTo(whole, within(1e-6 * whole));
    Random random = new Random(20_270_514);
    for (int i = 0; i < 4000; i++) {
      double y = random.nextDouble(slope);
      double x = left * y / slope + random.nextDouble() * (eave - (left + right) * y / slope);
      var holding = parts.stream().filter(part -> holds(part.corners(), x, y)).toList();
      assertThat(holding).as("%s, %s", x, y).hasSize(1);
      assertThat(holding.get(0).zone().word())
          .as("%s, %s", x, y)
          .isEqualTo(zoneByDistance(edition, roof, plane, x, y));
    }
  }

  /** Whether a point lies on the same side of every edge of a convex part. */
  private static boolean holds(List<Spot> corners, double x, double y) {
    int left = 0;
    for (int i = 0; i < corners.size(); i++) {
      Spot from = corners.get(i);
      Spot to = corners.get((i + 1) % corners.size());
      double side = (to.x() - from.x()) * (y - from.y()) - (to.y() - from.y()) * (x - from.x());
      left += side >= 0 ? 1 : 0;
    }
    return left == corners.size();
  }

  /** By hand: 40 ft by 20 ft on the flat at 6 in 12, zones 3 ft wide. */
  @Test
  void parts_ofAGableHaveTheAreasByHand() {
    double factor = Math.sqrt(1.25);
    var plane = new WindZones.Shape(480, 240 * factor, 0, 0, 6);
    List<WindZones.Part> parts = WindZones.of(LoadEdition.ASCE7_16, RoofShape.GABLE, plane, 36);
    assertThat(feet(parts, WindZone.ZONE_3R)).isCloseTo(2 * 9 * factor, within(1e-9));
    assertThat(feet(parts, WindZone.ZONE_3E)).isCloseTo(2 * 9 * factor, within(1e-9));
    assertThat(feet(parts, WindZone.ZONE_2N)).isCloseTo(2 * 3 * 14 * factor, within(1e-9));
    assertThat(feet(parts, WindZone.ZONE_2R)).isCloseTo(34 * 3 * factor, within(1e-9));
    assertThat(feet(parts, WindZone.ZONE_1)).isCloseTo(34 * 14 * factor, within(1e-9));
  }

  private static double feet(List<WindZones.Part> parts, WindZone zone) {
    return parts.stream()
        .filter(part -> part.zone() == zone)
        .mapToDouble(part -> part.area() / 144)
        .sum();
  }

  @Test
  void parts_ofASideAtAValleyHaveNoStripThere() {
    var plane = new WindZones.Shape(480, 200, 0, -120, 6);
    List<WindZones.Part> parts = WindZones.of(LoadEdition.ASCE7_10, RoofShape.GABLE, plane, 36);
    assertThat(parts.stream().filter(part -> part.zone() == WindZone.ZONE_3)).hasSize(2);
    assertThat(parts.stream().mapToDouble(WindZones.Part::area).sum())
        .isCloseTo((480 + 600) / 2.0 * 200, within(1e-6));
  }

  @Test
  void flatRoofs_haveNoRidgeStripsOrAreRefused() {
    var plane = new WindZones.Shape(480, 200, 0, 0, 1);
    List<WindZones.Part> parts = WindZones.of(LoadEdition.ASCE7_10, RoofShape.GABLE, plane, 36);
    assertThat(parts.stream().filter(part -> part.zone() == WindZone.ZONE_3)).hasSize(2);
    assertThatThrownBy(() -> WindZones.of(LoadEdition.ASCE7_22, RoofShape.GABLE, plane, 36))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("go by the height under asce7-22 and are not drawn");
  }

  @Test
  void sides_thatDoNotBelongToTheRoofAreRefused() {
    var hip = new WindZones.Shape(480, 200, 100, 100, 6);
    var rake = new WindZones.Shape(480, 200, 0, 100, 6);
    assertThatThrownBy(() -> WindZones.of(LoadEdition.ASCE7_10, RoofShape.GABLE, hip, 36))
        .hasMessageContaining("call the roof hip");
    assertThatThrownBy(() -> WindZones.of(LoadEdition.ASCE7_10, RoofShape.HIP, rake, 36))
        .hasMessageContaining("call the roof gable");
  }
}
