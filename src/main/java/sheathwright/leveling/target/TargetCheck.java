package sheathwright.leveling.target;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A second opinion, which shares nothing with the search: the surface meets every bound, and no way
 * of moving it a little makes it better. Of all ways only those need trying that keep two of the
 * things that touch it touching.
 */
final class TargetCheck {

  /** What is promised. */
  private static final BigDecimal MISSED = new BigDecimal("1e-6");

  /**
   * Tie-ins that were rounded somewhere miss one another by a little, five times what is promised.
   * Half and double pass the same 240 planes.
   */
  private static final double TOUCHING = 5e-6;

  /**
   * Factors are 1 at most, and rounding leaves 1e-15 of the sums of three of their products. Half
   * and double pass the same 240 planes.
   */
  private static final double SAME = 1e-9;

  private final TargetFrame frame;
  private final TargetObjective objective;
  private final double[] surface;
  private final List<double[]> held = new ArrayList<>(); // may not fall, as factors
  private final List<double[]> largest = new ArrayList<>(); // factors of the largest build-up

  private TargetCheck(
      TargetFrame frame, TargetObjective objective, List<TargetRow> rows, double[] surface) {
    this.frame = frame;
    this.objective = objective;
    this.surface = surface;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < frame.size(); i++) {
      most = Math.max(most, frame.buildUp(i, surface));
    }
    for (TargetRow row : rows) {
      double[] factors = row.factors();
      double[] place = {factors[0], factors[1], factors[2]};
      boolean isBound = row.kind() == TargetRow.Kind.LEAST || row.kind() == TargetRow.Kind.MOST;
      if (isBound && row.slack(surface) < TOUCHING) {
        held.add(place);
      } else if (row.kind() == TargetRow.Kind.LARGEST
          && most - frame.buildUp(row.index(), surface) < TOUCHING) {
        largest.add(new double[] {-place[0], -place[1], -place[2]});
      }
    }
  }

  /** Whether every reading's build-up is within its bounds. */
  static boolean isWithinBounds(TargetFrame frame, List<BigDecimal> buildUps) {
    for (int i = 0; i < frame.size(); i++) {
      BigDecimal above = buildUps.get(i).subtract(TargetVertex.exact(frame.reading(i).least()));
      if (above.add(MISSED).signum() < 0) {
        return false;
      }
      if (frame.most(i) < Double.POSITIVE_INFINITY
          && TargetVertex.exact(frame.most(i)).subtract(buildUps.get(i)).add(MISSED).signum() < 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether no surface is better by the objective, the other objective, the slope across and the
   * slope up, each counting only where those before it are equal.
   *
   * @param rows some of the bounds: enough of them to show it
   * @param surface as the frame's variables
   */
  static boolean isBest(
      TargetFrame frame, TargetObjective objective, List<TargetRow> rows, double[] surface) {
    TargetCheck check = new TargetCheck(frame, objective, rows, surface);
    List<double[]> touching = check.touching();
    for (int i = 0; i < touching.size(); i++) {
      for (int j = 0; j < i; j++) {
        double[] way = along(touching.get(i), touching.get(j));
        if (way != null && (check.isBetter(way) || check.isBetter(negative(way)))) {
          return false;
        }
      }
    }
    return true;
  }

  private List<double[]> touching() {
    List<double[]> touching = new ArrayList<>(held);
    touching.add(frame.slope(TargetFrame.ACROSS));
    touching.add(frame.slope(TargetFrame.UP));
    for (int i = 1; i < largest.size(); i++) {
      for (int j = 0; j < i; j++) {
        double[] one = largest.get(i);
        double[] other = largest.get(j);
        touching.add(new double[] {0, one[1] - other[1], one[2] - other[2]});
      }
    }
    return touching;
  }

  private boolean isBetter(double[] way) {
    if (held.stream().anyMatch(row -> times(row, way) < -SAME)) {
      return false;
    }
    double total = times(frame.meanHeight(), way);
    double most = largest.stream().mapToDouble(row -> times(row, way)).max().orElse(0);
    boolean isTotalFirst = objective == TargetObjective.TOTAL;
    double[] changes = {
      isTotalFirst ? total : most,
      isTotalFirst ? most : total,
      steeper(TargetFrame.ACROSS, way),
      steeper(TargetFrame.UP, way)
    };
    for (double change : changes) {
      if (Math.abs(change) > SAME) {
        return change < 0;
      }
    }
    return false;
  }

  private double steeper(int which, double[] way) {
    double slope = times(frame.slope(which), surface);
    double change = times(frame.slope(which), way);
    return Math.abs(slope) < TOUCHING ? Math.abs(change) : Math.signum(slope) * change;
  }

  private static double times(double[] factors, double[] way) {
    return factors[0] * way[0] + factors[1] * way[1] + factors[2] * way[2];
  }

  private static double[] negative(double[] way) {
    return new double[] {-way[0], -way[1], -way[2]};
  }

  /** The way of length one that leaves both as they are; nothing if they are alike. */
  private static double[] along(double[] one, double[] other) {
    double[] way = {
      one[1] * other[2] - one[2] * other[1],
      one[2] * other[0] - one[0] * other[2],
      one[0] * other[1] - one[1] * other[0]
    };
    double length = Math.sqrt(times(way, way));
    return length < SAME ? null : new double[] {way[0] / length, way[1] / length, way[2] / length};
  }
}
