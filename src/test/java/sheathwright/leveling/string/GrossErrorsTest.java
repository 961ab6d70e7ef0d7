package sheathwright.leveling.string;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sheathwright.leveling.string.Neighbors.Spot;

/** Readings of one straight rafter, some of them misread: those alone are silenced. */
class GrossErrorsTest {

  private static final SuspicionRules.Plain USUAL = new SuspicionRules.Plain(5, 0.25, 0.4);

  private static Set<Spot> silenced(double... heights) {
    double[] places = new double[heights.length];
    for (int i = 0; i < places.length; i++) {
      places[i] = 10 * i;
    }
    RafterProfile.Plain rafter = new RafterProfile.Plain("R1", 0, new Profile(places, heights));
    return GrossErrors.silenced(new PlaneProfiles.Plain(List.of(rafter)), USUAL).unheard();
  }

  @Test
  void oneWrongReading_isSilenced() {
    assertThat(silenced(0, 0, 0, 0, 3, 0, 0, 0, 0, 0, 0, 0)).containsExactly(new Spot(0, 4));
    assertThat(silenced(0, 0, 0, 0, -3, 0, 0, 0, 0, 0, 0, 0)).containsExactly(new Spot(0, 4));
    assertThat(silenced(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)).isEmpty();
    assertThat(silenced(0, 0, 0, 0, 0.25, 0, 0, 0, 0, 0, 0, 0)).as("no more than 1/4").isEmpty();
  }

  /** Two of thirty: the one is not believed because of the other. */
  @Test
  void twoWrongReadings_areBothSilenced() {
    double[] heights = new double[30];
    heights[7] = 5;
    heights[20] = -5;
    assertThat(silenced(heights)).containsExactlyInAnyOrder(new Spot(0, 7), new Spot(0, 20));
    heights[13] = 3;
    assertThat(silenced(heights))
        .containsExactlyInAnyOrder(new Spot(0, 7), new Spot(0, 13), new Spot(0, 20));
  }

  /** Three of four are believed: of three readings none may be wrong. */
  @Test
  void fewReadings_areAllBelieved() {
    assertThat(silenced(0, 5, 0)).isEmpty();
  }
}
