package sheathwright.levelling;

import static sheathwright.levelling.TargetRow.Kind.FALL;
import static sheathwright.levelling.TargetRow.Kind.LARGEST;
import static sheathwright.levelling.TargetRow.Kind.LEAST;
import static sheathwright.levelling.TargetRow.Kind.LEVEL;
import static sheathwright.levelling.TargetRow.Kind.MOST;
import static sheathwright.levelling.TargetRow.Kind.RISE;
import static sheathwright.levelling.TargetRow.Kind.WOOD;

import java.math.BigDecimal;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Readings as the programme sees them: places from -1 to 1 about the middle, heights from their
 * mean, so that all of its numbers are of one size. The variables are the height of the surface in
 * the middle, its slopes across and up, the largest build-up (or what the bounds lack), and the
 * sizes of the slopes.
 */
final class TargetFrame {

  static final int HEIGHT = 0;
  static final int ACROSS = 1;
  static final int UP = 2;
  static final int EXTRA = 3;
  static final int SIZE = 3; // from a slope to its size
  static final int VARIABLES = 6;

  private static final double ONE_PLACE = 1e-6;
  private static final double FAR = 1e6;

  private final List<TargetReading> readings;
  private final double cap;
  private final Spread across;
  private final Spread up;
  private final double mean;
  private final double[][] places;
  private final double[] heights;

  TargetFrame(List<TargetReading> readings, double cap) {
    this.readings = List.copyOf(readings);
    this.cap = cap;
    across = Spread.of(readings, TargetReading::x);
    up = Spread.of(readings, TargetReading::y);
    mean = readings.stream().mapToDouble(TargetReading::z).average().orElse(0);
    places =
        readings.stream()
            .map(reading -> new double[] {1, across.place(reading.x()), up.place(reading.y())})
            .toArray(double[][]::new);
    heights = readings.stream().mapToDouble(reading -> reading.z() - mean).toArray();
  }

  /**
   * How far the readings spread.
   *
   * @param middle between the outermost, in inches
   * @param half of their distance; 0 if all lie in one place
   */
  private record Spread(double middle, double half) {

    static Spread of(List<TargetReading> readings, ToDoubleFunction<TargetReading> coordinate) {
      DoubleSummaryStatistics ends = readings.stream().mapToDouble(coordinate).summaryStatistics();
      double half = (ends.getMax() - ends.getMin()) / 2;
      return new Spread(ends.getMin() + half, half < ONE_PLACE ? 0 : half);
    }

    double place(double coordinate) {
      return half == 0 ? 0 : (coordinate - middle) / half;
    }
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
  static TargetRow rise(int slope) {
    double[] factors = only(slope + SIZE);
    factors[slope] = -1;
    return new TargetRow(RISE, slope, factors, 0);
  }

  /** The size of a slope is at least its fall. */
  static TargetRow fall(int slope) {
    double[] factors = only(slope + SIZE);
    factors[slope] = 1;
    return new TargetRow(FALL, slope, factors, 0);
  }

  static TargetRow level(int slope) {
    return new TargetRow(LEVEL, slope, only(slope), 0);
  }

  private TargetRow row(TargetRow.Kind kind, int index, double sign, double extra, double least) {
    double[] factors = new double[VARIABLES];
    for (int i = 0; i < places[index].length; i++) {
      factors[i] = sign * places[index][i];
    }
    factors[EXTRA] = extra;
    return new TargetRow(kind, index, factors, least);
  }

  /** A surface in the variables of the programme: height at the origin, slopes, largest. */
  double[] seen(BigDecimal[] surface) {
    double[] values = new double[VARIABLES];
    values[ACROSS] = surface[ACROSS].doubleValue() * across.half();
    values[UP] = surface[UP].doubleValue() * up.half();
    values[HEIGHT] =
        surface[HEIGHT]
            .add(surface[ACROSS].multiply(BigDecimal.valueOf(across.middle())))
            .add(surface[UP].multiply(BigDecimal.valueOf(up.middle())))
            .subtract(BigDecimal.valueOf(mean))
            .doubleValue();
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
