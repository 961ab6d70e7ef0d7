package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.pitch;

import java.util.DoubleSummaryStatistics;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Solution;
import sheathwright.published.LoadEdition;
import sheathwright.roof.Plane;
import sheathwright.roof.Spot;

class ZoneMapTest {

  private static ZoneMap map(Plane plane, RoofShape roof, LoadEdition edition) {
    return ZoneMap.of(plane, pitch(6), Choice.literal(roof), Choice.literal(edition), ft(3));
  }

  /** The zones cover the plane once, so that their areas add up to its own. */
  @ParameterizedTest
  @CsvSource({
    "50, 17.9, 16, 16, HIP",
    "32, 17.9, 16, 16, HIP",
    "42, 16.77, 0, 0, GABLE",
    "20, 12, 0, -8, GABLE"
  })
  void zones_coverThePlaneOnce(
      double eave, double slope, double left, double right, RoofShape roof) {
    Plane plane = Plane.trapezoid("south", ft(eave), ft(slope), ft(left), ft(right));
    for (LoadEdition edition : LoadEdition.values()) {
      double sum =
          map(plane, roof, edition).areas().values().stream()
              .mapToDouble(area -> area.value())
              .sum();
      assertThat(sum).as("%s", edition).isCloseTo(plane.area().value(), within(0.02));
    }
  }

  /**
   * By hand: corners of a gable are 3 ft on the flat square, wider along the wood by the slope
   * factor 1.118.
   */
  @Test
  void theCornersOfAGable_areSquaresOfTheZoneWidth() {
    ZoneMap map =
        map(Plane.rectangle("south", ft(42), ft(16.77)), RoofShape.GABLE, LoadEdition.ASCE7_10);
    assertThat(map.areas().get(WindZone.ZONE_3).value())
        .isCloseTo(4 * 3 * 3 * Math.sqrt(1.25), within(0.01));
  }

  /**
   * By hand: the end of a hip, 32 ft of eave whose hips meet 16 ft in, which begins 10 ft along.
   */
  @Test
  void zones_areDrawnWhereThePlaneBegins() {
    Plane end = Plane.outline("east", "10 0, 42 0, 26 17.9");
    ZoneMap zones = map(end, RoofShape.HIP, LoadEdition.ASCE7_16);
    DoubleSummaryStatistics along =
        zones.parts().stream()
            .flatMap(part -> part.corners().stream())
            .collect(Collectors.summarizingDouble(Spot::x));
    assertThat(along.getMin()).isCloseTo(120, within(1e-6));
    assertThat(along.getMax()).isCloseTo(504, within(1e-6));
    assertThat(zones.areas().values().stream().mapToDouble(area -> area.value()).sum())
        .isCloseTo(32 * 17.9 / 2, within(0.02));
    DoubleSummaryStatistics field =
        zones.parts().stream()
            .filter(part -> part.zone() == WindZone.ZONE_1)
            .flatMap(part -> part.corners().stream())
            .collect(Collectors.summarizingDouble(Spot::x));
    assertThat((field.getMin() + field.getMax()) / 2)
        .as("below its peak")
        .isCloseTo(312, within(1e-6));
    Plane beside = Plane.outline("west", "10 0, 42 0, 42 12, 6 12"); // a valley leans out 4 ft
    DoubleSummaryStatistics out =
        map(beside, RoofShape.GABLE, LoadEdition.ASCE7_10).parts().stream()
            .flatMap(part -> part.corners().stream())
            .collect(Collectors.summarizingDouble(Spot::x));
    assertThat(out.getMin()).isCloseTo(72, within(1e-6));
    assertThat(out.getMax()).isCloseTo(504, within(1e-6));
    Plane gable = Plane.outline("south", "10 0, 52 0, 52 16.77, 10 16.77");
    assertThat(
            map(gable, RoofShape.GABLE, LoadEdition.ASCE7_10).areas().get(WindZone.ZONE_3).value())
        .isCloseTo(4 * 3 * 3 * Math.sqrt(1.25), within(0.01));
  }

  @Test
  void aMap_saysItsAreasByName() {
    ZoneMap map =
        map(Plane.rectangle("south", ft(42), ft(16.77)), RoofShape.GABLE, LoadEdition.ASCE7_10);
    Figure<Area> corners = map.areas().get(WindZone.ZONE_3);
    assertThat(corners.name()).isEqualTo("zone_3_sf");
    assertThat(Solution.behind(corners).orElseThrow().name()).isEqualTo("wind_zones_of_south");
    assertThat(map)
        .asString()
        .startsWith("wind zones of south, zone 1: " + map.areas().get(WindZone.ZONE_1))
        .endsWith(", zone 3: " + corners);
  }

  @Test
  void aPlaneWithACornerCutOff_isRefused() {
    Plane cut = Plane.outline("cut", "0 0, 20 0, 20 5, 15 10, 0 10");
    assertThatThrownBy(() -> map(cut, RoofShape.GABLE, LoadEdition.ASCE7_10))
        .hasMessageContaining("plane cut has 5 sides");
  }

  @Test
  void aPlaneOfManySides_isRefused() {
    Plane porch = Plane.outline("porch", "0 0, 22 0, 22 9, 14 9, 14 6, 0 6");
    assertThatThrownBy(() -> map(porch, RoofShape.GABLE, LoadEdition.ASCE7_10))
        .hasMessageContaining("plane porch has 6 sides");
  }
}
