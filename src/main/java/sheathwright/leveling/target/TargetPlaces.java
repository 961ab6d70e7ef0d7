package sheathwright.leveling.target;

import java.math.BigDecimal;
import java.util.List;

/**
 * Where readings lie, as numbers from about -1 to 1: across from the middle one of them all, and up
 * from the line that follows them best, so that readings along a hip or a valley are as good as
 * those on a grid. A surface is its height in the middle and its rise over each of the two.
 */
final class TargetPlaces {

  /** Inches: nobody measures a place closer than this. Half and double give the same 240 planes. */
  private static final double ONE_PLACE = 1e-4;

  private final double middleX;
  private final double middleY;
  private final double lean; // inches up for each inch across
  private final double halfX;
  private final double halfY;
  private final boolean isWide;
  private final boolean isDeep;

  TargetPlaces(List<TargetReading> readings) {
    middleX = readings.stream().mapToDouble(TargetReading::x).average().orElse(0);
    middleY = readings.stream().mapToDouble(TargetReading::y).average().orElse(0);
    double reachX = 0;
    double products = 0;
    double squares = 0;
    for (TargetReading reading : readings) {
      double x = reading.x() - middleX;
      reachX = Math.max(reachX, Math.abs(x));
      products += x * (reading.y() - middleY);
      squares += x * x;
    }
    isWide = reachX > ONE_PLACE;
    lean = isWide ? products / squares : 0;
    double reachY = readings.stream().mapToDouble(one -> Math.abs(aside(one))).max().orElse(0);
    isDeep = reachY > ONE_PLACE;
    halfX = isWide ? reachX : 1;
    halfY = isDeep ? reachY : 1;
  }

  private double aside(TargetReading reading) {
    return reading.y() - middleY - lean * (reading.x() - middleX);
  }

  /** A reading, brought into line where all readings are in line but for less than is measured. */
  TargetReading inLine(TargetReading reading) {
    return isDeep ? reading : reading.at(reading.x(), reading.y() - aside(reading));
  }

  /** Factors of the height of a surface at a reading. */
  double[] of(TargetReading reading) {
    return new double[] {
      1, isWide ? (reading.x() - middleX) / halfX : 0, isDeep ? aside(reading) / halfY : 0
    };
  }

  /** Factors of a number that is its slope across but for a scale. */
  double[] across() {
    return scaled(1 / halfX, -lean / halfY);
  }

  /** Factors of a number that is its slope up but for a scale. */
  double[] up() {
    return scaled(0, 1 / halfY);
  }

  private static double[] scaled(double first, double second) {
    double largest = Math.max(Math.abs(first), Math.abs(second));
    return new double[] {0, first / largest, second / largest};
  }

  /**
   * A surface as these places see it.
   *
   * @param height at the origin, in inches
   * @param across rise for each inch across
   * @param up rise for each inch up
   */
  double[] seen(BigDecimal height, BigDecimal across, BigDecimal up) {
    BigDecimal middle =
        height
            .add(across.multiply(BigDecimal.valueOf(middleX)))
            .add(up.multiply(BigDecimal.valueOf(middleY)));
    BigDecimal along = across.add(up.multiply(BigDecimal.valueOf(lean)));
    return new double[] {
      middle.doubleValue(), along.doubleValue() * halfX, up.doubleValue() * halfY
    };
  }
}
