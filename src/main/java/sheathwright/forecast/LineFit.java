package sheathwright.forecast;

import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The straight line through points from which it lies least far off, by least squares. Plain
 * numbers.
 *
 * @param points that it was laid through
 * @param start what it begins with, where nothing is counted
 * @param each what one more adds
 * @param error the standard error of that
 */
public record LineFit(int points, double start, double each, double error) {

  /** Points that tell of a line and of how far it may be off. */
  public static final int FEWEST = 3;

  /**
   * A point.
   *
   * @param count how many
   * @param value what they came to
   */
  public record Point(double count, double value) {}

  /**
   * The line through some points.
   *
   * @param points three or more, not all of one count
   */
  public static LineFit of(List<Point> points) {
    SimpleRegression line = new SimpleRegression();
    points.forEach(point -> line.addData(point.count(), point.value()));
    return new LineFit(points.size(), line.getIntercept(), line.getSlope(), line.getSlopeStdErr());
  }

  /** What so many come to by it. */
  public double at(double count) {
    return start + each * count;
  }
}
