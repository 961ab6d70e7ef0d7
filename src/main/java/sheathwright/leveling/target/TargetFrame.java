package sheathwright.leveling.target;

import static sheathwright.leveling.target.TargetRow.Kind.FALL;
import static sheathwright.leveling.target.TargetRow.Kind.LARGEST;
import static sheathwright.leveling.target.TargetRow.Kind.LEAST;
import static sheathwright.leveling.target.TargetRow.Kind.LEVEL;
import static sheathwright.leveling.target.TargetRow.Kind.MOST;
import static sheathwright.leveling.target.TargetRow.Kind.RISE;
import static sheathwright.leveling.target.TargetRow.Kind.WOOD;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * Readings as the program sees them: places about the middle, heights from their mean, so that all
 * of its numbers are of one size. The variables are the height of the surface in the middle, what
 * it rises over the places' two directions, the largest build-up (or what the bounds lack), and the
 * sizes of the slopes across and up.
 */
final class TargetFrame {

  static final int HEIGHT = 0; // number of a variable, as the next three
  static final int ACROSS = 1; // its rise over the places' one direction
  static final int UP = 2; // and over the other
  static final int EXTRA = 3; // the largest build-up, or what the bounds lack
  static final int SIZE = 3; // from a slope's number to that of its size
  static final int VARIABLES = 6; // these four and two sizes

  /** More would cost the library digits; half and double give the same 240 planes. */
  private static final double FAR = 1e4;

  private final List<TargetReading> readings;
  private final double cap;
  private final TargetPlaces where;
  private final double mean;
  private final double[][] places;
  private final double[] heights;

  TargetFrame(List<TargetReading> readings, double cap) {
    this.cap = cap;
    where = new TargetPlaces(readings);
    this.readings = readings.stream().map(where::inLine).toList();
    mean = readings.stream().mapToDouble(TargetReading::z).average().orElse(0);
    places = readings.stream().map(where::of).toArray(double[][]::new);
    heights = readings.stream().mapToDouble(reading -> reading.z() - mean).toArray();
  }

  int size() {
    return places.length;
  }

  TargetReading reading(int index) {
    return readings.get(index);
  }

  /** Whether the largest build-up of a reading is what the cap leaves. */
  boolean isCapped(int index) {
    return cap < readings.get(index).most();
  }

  double most(int index) {
    return Math.min(cap, readings.get(index).most());
  }

  /** Whether anything limits a build-up, so that no surface may serve. */
  boolean isLimited() {
    return cap < Double.POSITIVE_INFINITY
        || readings.stream().anyMatch(reading -> reading.most() < Double.POSITIVE_INFINITY);
  }

  /** No variable of a solution is larger than this. */
  double reach() {
    double largest = 1;
    for (int i = 0; i < heights.length; i++) {
      largest = Math.max(largest, Math.abs(heights[i]) + readings.get(i).least());
    }
    return FAR * largest;
  }

  /** The height of the surface at the readings' mean place, as an objective. */
  double[] meanHeight() {
    double[] mean = new double[VARIABLES];
    for (double[] place : places) {
      for (int i = 0; i < place.length; i++) {
        mean[i] += place[i] / places.length;
      }
    }
    return mean;
  }

  /** One variable as an objective. */
  static double[] only(int variable) {
    double[] objective = new double[VARIABLES];
    objective[variable] = 1;
    return objective;
  }

  TargetRow wood(int index) {
    return row(WOOD, index, 1, 0, heights[index]);
  }

  TargetRow least(int index) {
    return row(LEAST, index, 1, 0, heights[index] + readings.get(index).least());
  }

  TargetRow most(int index, double give) {
    return row(MOST, index, -1, give, -heights[index] - most(index));
  }

  /** The least build-up, if what the bounds lack is given way. */
  TargetRow leastGiving(int index) {
    return row(LEAST, index, 1, 1, heights[index] + readings.get(index).least());
  }

  TargetRow largest(int index) {
    return row(LARGEST, index, -1, 1, -heights[index]);
  }

  /** The size of a slope is at least its rise. */
  TargetRow rise(int slope) {
    return new TargetRow(RISE, slope, size(slope, -1), 0);
  }

  /** The size of a slope is at least its fall. */
  TargetRow fall(int slope) {
    return new TargetRow(FALL, slope, size(slope, 1), 0);
  }

  private double[] size(int slope, double sign) {
    double[] factors = Arrays.stream(slope(slope)).map(factor -> sign * factor).toArray();
    factors[slope + SIZE] = 1;
    return factors;
  }

  /** A slope is none. */
  TargetRow level(int slope) {
    return new TargetRow(LEVEL, slope, slope(slope), 0);
  }

  /** Factors of a slope of the roof, but for a scale. */
  double[] slope(int slope) {
    return Arrays.copyOf(slope == ACROSS ? where.across() : where.up(), VARIABLES);
  }

  private TargetRow row(TargetRow.Kind kind, int index, double sign, double extra, double least) {
    double[] factors = new double[VARIABLES];
    for (int i = 0; i < places[index].length; i++) {
      factors[i] = sign * places[index][i];
    }
    factors[EXTRA] = extra;
    return new TargetRow(kind, index, factors, least);
  }

  /** A surface in the variables of the program: height at the origin, slopes, largest. */
  double[] seen(BigDecimal[] surface) {
    double[] values =
        Arrays.copyOf(
            where.seen(
                surface[HEIGHT].subtract(BigDecimal.valueOf(mean)), surface[ACROSS], surface[UP]),
            VARIABLES);
    values[EXTRA] = surface[EXTRA].doubleValue();
    return values;
  }

  /** How far the surface lies above the wood. */
  double buildUp(int index, double[] values) {
    double[] place = places[index];
    return values[HEIGHT]
        + values[ACROSS] * place[ACROSS]
        + values[UP] * place[UP]
        - heights[index];
  }
}
