package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Asked;

/**
 * Low roofs at chance winds and areas, against the lines that ASCE 7-16 draws in Figure 30.3-2A,
 * from memory: straight on a logarithmic scale from 10 to 500 sq ft, and GCpi 0.18 inside.
 */
class ZoneLinesTest {

  private static final String[] ZONES = {"1", "2", "3"};
  private static final double[] AT_10 = {1.7, 2.3, 3.2};
  private static final double[] AT_500 = {1.0, 1.4, 1.4};

  @Test
  void lowRoofs_followTheFiguresLines() {
    Random chance = new Random(30_3_2);
    for (int i = 0; i < 300; i++) {
      int zone = chance.nextInt(3);
      double area = 5 + 95 * chance.nextDouble();
      double wind = 100 + 80 * chance.nextDouble();
      double rise = 1.4 * chance.nextDouble();
      double part = Math.log(Math.max(10, area) / 10) / Math.log(50);
      double coefficient = AT_10[zone] + (AT_500[zone] - AT_10[zone]) * part + 0.18;
      double velocity = 0.00256 * 2.01 * Math.pow(30 / 1200d, 2 / 7d) * 0.85 * wind * wind;
      double expected = Math.max(10, 0.6 * velocity * coefficient);
      double found =
          Asked.of("sheathing_uplift")
              .with("wind_mph", "" + wind)
              .with("exposure", "b")
              .with("height_ft", "30")
              .with("rise_in_12", "" + rise)
              .with("roof", "gable")
              .with("zone", ZONES[zone])
              .with("area_sf", "" + area)
              .with("edition", "7-16")
              .number("uplift_psf");
      assertThat(found)
          .as("zone %s, %s sq ft, %s mph", ZONES[zone], area, wind)
          .isCloseTo(expected, within(0.002 * expected));
    }
  }
}
