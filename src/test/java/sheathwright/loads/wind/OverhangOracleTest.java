package sheathwright.loads.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Asked;

/**
 * Overhangs at random winds, areas and heights against the figures said again in plain numbers:
 * straight lines over the logarithm of the area between two printed ends. Of areas over 100 sq ft
 * the code's table ends, and its last value is kept, which is no less.
 */
class OverhangOracleTest {

  /** Heights for which the figures print a factor, and the factors in a town and in the open. */
  private static final double[] HEIGHTS = {15, 20, 25, 30};

  private static final double[] OPEN = {1.21, 1.29, 1.35, 1.40};
  private static final double[] TOWN_SINCE_2016 = {0.82, 0.89, 0.94, 1.00};

  private static double line(double area, double from, double to, double end) {
    double part = (Math.log10(area) - 1) / (Math.log10(end) - 1);
    return from + (to - from) * Math.max(0, Math.min(1, part));
  }

  /** ASCE 7-10, Figures 30.4-2A, B and C, overhangs, from memory. */
  private static double of2010(double degrees, int zone, double area) {
    if (degrees <= 7) {
      if (zone == 3) {
        return line(area, 2.8, 0.8, 100);
      }
      return line(area, 1.7, 1.6, 100);
    }
    if (degrees <= 27) {
      return zone == 3 ? line(area, 3.7, 2.5, 100) : 2.2;
    }
    return line(area, 2.0, 1.8, 100);
  }

  /** ASCE 7-16, Figure 30.3-2A: flat roofs, 10 to 500 sq ft; the wall's 1.0 pushes from below. */
  private static double of2016Flat(int zone, double area) {
    double above =
        switch (zone) {
          case 1 -> line(area, 1.7, 1.0, 500);
          case 2 -> line(area, 2.3, 1.4, 500);
          case 3 -> line(area, 3.2, 1.4, 500);
          default -> throw new IllegalArgumentException("zone " + zone);
        };
    return above + 1.0;
  }

  private static Asked asked(
      Random chance, String edition, double rise, int zone, double area, double wind, int height) {
    return Asked.of("overhang_uplift")
        .with("wind_mph", "" + wind)
        .with("exposure", chance == null ? "b" : "c")
        .with("height_ft", "" + HEIGHTS[height])
        .with("rise_in_12", "" + rise)
        .with("roof", "gable")
        .with("zone", "" + zone)
        .with("area_sf", "" + area)
        .with("edition", edition);
  }

  private static double allowable(double wind, double factor, double coefficient) {
    return Math.max(10, 0.6 * 0.00256 * 0.70059 * 0.85 * wind * wind * factor * coefficient);
  }

  @Test
  void asce10_isItsFigureAtAnyArea() {
    Random chance = new Random(30_4_2);
    for (int i = 0; i < 200; i++) {
      double rise = 11.5 * chance.nextDouble() + 0.2;
      double degrees = Math.toDegrees(Math.atan(rise / 12));
      int zone = degrees <= 7 ? 1 + chance.nextInt(3) : 2 + chance.nextInt(2);
      double area = Math.pow(10, 1 + 1.9 * chance.nextDouble());
      double wind = 90 + 90 * chance.nextDouble();
      int height = chance.nextInt(4);
      boolean isOpen = chance.nextBoolean();
      double found =
          asked(isOpen ? chance : null, "7-10", rise, zone, area, wind, height)
              .number("overhang_psf");
      double expected = allowable(wind, isOpen ? OPEN[height] : 1.0, of2010(degrees, zone, area));
      assertThat(found)
          .as("rise %s, zone %d, %s sq ft", rise, zone, area)
          .isCloseTo(expected, within(0.005 * expected));
    }
  }

  @Test
  void asce16_onFlatRoofs_isRoofAndWallAtAnyArea() {
    Random chance = new Random(30_3_2);
    for (int i = 0; i < 200; i++) {
      double rise = 1.4 * chance.nextDouble();
      int zone = 1 + chance.nextInt(3);
      double area = Math.pow(10, 1 + 1.69 * chance.nextDouble());
      double wind = 90 + 90 * chance.nextDouble();
      int height = chance.nextInt(4);
      boolean isOpen = chance.nextBoolean();
      double found =
          asked(isOpen ? chance : null, "7-16", rise, zone, area, wind, height)
              .number("overhang_psf");
      double expected =
          allowable(
              wind,
              (isOpen ? OPEN : TOWN_SINCE_2016)[height],
              of2016Flat(zone, Math.min(100, area)));
      assertThat(found)
          .as("rise %s, zone %d, %s sq ft", rise, zone, area)
          .isCloseTo(expected, within(0.005 * expected));
    }
  }
}
