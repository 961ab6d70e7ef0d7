package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/** No printed zone of an edge or a corner is pulled harder than the one that is taken for all. */
class WorstZonesTest {

  private static final List<Double> RISES = List.of(1.0, 3.0, 4.0, 5.0, 6.0, 8.0, 11.9, 12.0);

  private static Figure<?> uplift(LoadEdition edition, RoofShape roof, double rise, WindZone zone) {
    return WindPressures.sheathingUplift(
            WindSite.of(edition, Figure.of(140, Units.MPH), Exposure.EXPOSURE_C)
                .height(Figure.of(30, Units.FOOT)),
            RoofPlace.of(roof, Figure.of(rise, Units.RISE_IN_12), zone))
        .uplift();
  }

  @Test
  void noZoneOfItsKind_isPulledHarder() {
    int held = 0;
    for (LoadEdition edition : LoadEdition.values()) {
      for (RoofShape roof : RoofShape.values()) {
        for (double rise : RISES) {
          Figure<?> edges = uplift(edition, roof, rise, edges(edition, roof, rise));
          Figure<?> corners = uplift(edition, roof, rise, corners(edition, roof, rise));
          for (WindZone zone : WindZone.values()) {
            Figure<?> here = uplift(edition, roof, rise, zone);
            if (here.refusal().isEmpty() && !zone.word().startsWith("1")) {
              Figure<?> worst = zone.word().startsWith("2") ? edges : corners;
              assertThat(worst.value())
                  .as("%s %s %s in 12, zone %s", edition, roof, rise, zone)
                  .isGreaterThanOrEqualTo(here.value() - 1e-9);
              held++;
            }
          }
        }
      }
    }
    assertThat(held).isGreaterThan(80);
  }

  private static WindZone edges(LoadEdition edition, RoofShape roof, double rise) {
    return WorstZones.edges(edition, roof, Figure.of(rise, Units.RISE_IN_12)).value();
  }

  private static WindZone corners(LoadEdition edition, RoofShape roof, double rise) {
    return WorstZones.corners(edition, roof, Figure.of(rise, Units.RISE_IN_12)).value();
  }
}
