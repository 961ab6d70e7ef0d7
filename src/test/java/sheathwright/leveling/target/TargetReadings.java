package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented readings of sagged roof planes, in sixteenths of an inch. */
public final class TargetReadings {

  private TargetReadings() {}

  /**
   * Rafters 24 in apart with stations 18 in apart, sagged as they like, tilted against the string.
   */
  public static List<TargetReading> sagged(Random random, int rafters, int stations) {
    double across = (random.nextInt(9) - 4) / 16.0;
    double along = (random.nextInt(9) - 4) / 16.0;
    List<TargetReading> readings = new ArrayList<>();
    for (int rafter = 0; rafter < rafters; rafter++) {
      double sag = 1.5 * random.nextDouble();
      for (int station = 0; station < stations; station++) {
        double up = stations == 1 ? 0 : (double) station / (stations - 1);
        double low = 4 * sag * up * (1 - up) + random.nextDouble() / 2;
        double z = Math.rint((across * rafter + along * station - low) * 16) / 16;
        readings.add(TargetReading.of(rafter + "/" + station, 24.0 * rafter, 18.0 * station, z));
      }
    }
    return readings;
  }

  /** The same with bounds at some of the readings. */
  public static List<TargetReading> bounded(Random random, List<TargetReading> readings) {
    return readings.stream()
        .map(
            reading -> {
              double least = random.nextInt(8) == 0 ? random.nextInt(8) / 16.0 : 0;
              double most =
                  random.nextInt(8) == 0
                      ? least + (8 + random.nextInt(48)) / 16.0
                      : TargetReading.UNLIMITED;
              return reading.within(least, most);
            })
        .toList();
  }
}
