package sheathwright.leveling.target;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A straight line over each rafter, each for itself: flat up the slope, not across. It takes less
 * build-up than one plane.
 *
 * <p>Each rafter's line is the best by the objective, of equally good ones the one whose other
 * objective is least, then the one least steep against the string.
 *
 * @param objective what each line makes least
 * @param lines from the least {@code x} on
 * @param buildUps of each reading, in inches, in the order of the readings
 * @param total of all build-ups, in inches
 * @param largest of them, in inches
 */
public record TargetLines(
    TargetObjective objective,
    List<Line> lines,
    List<Double> buildUps,
    double total,
    double largest) {

  /**
   * The line over one rafter.
   *
   * @param x of the rafter, in inches
   * @param height above the string where y is 0, in inches
   * @param up rise for each inch up the slope
   * @param readings of the rafter, as places in the list, counted from 0
   */
  public record Line(double x, double height, double up, List<Integer> readings) {

    /** Its height above the string, in inches. */
    public double at(double y) {
      return height + up * y;
    }
  }

  /**
   * The lines over some readings, exact to a millionth of an inch; readings of the same {@code x}
   * are of one rafter.
   *
   * @param readings at least one
   * @param cap no build-up is to be more, in inches; {@link TargetReading#UNLIMITED} if there is
   *     none
   * @throws NoTargetException if on some rafter no line meets every bound; it names the first such
   *     rafter's
   * @throws sheathwright.figure.RefusedException if there are no readings, or the cap is below zero
   */
  public static TargetLines over(
      List<TargetReading> readings, TargetObjective objective, double cap) {
    if (readings.isEmpty()) {
      TargetPlane.over(readings, objective, cap);
    }
    Map<Double, List<Integer>> rafters =
        IntStream.range(0, readings.size())
            .boxed()
            .collect(groupingBy(i -> readings.get(i).x(), TreeMap::new, toList()));
    List<Line> lines = new ArrayList<>();
    List<Double> buildUps = new ArrayList<>(Collections.nCopies(readings.size(), 0.0));
    BigDecimal total = BigDecimal.ZERO;
    double largest = 0;
    for (Map.Entry<Double, List<Integer>> rafter : rafters.entrySet()) {
      List<Integer> its = rafter.getValue();
      TargetPlane line = line(readings, its, objective, cap);
      lines.add(new Line(rafter.getKey(), line.height(), line.up(), List.copyOf(its)));
      for (int i = 0; i < its.size(); i++) {
        buildUps.set(its.get(i), line.buildUps().get(i));
      }
      total = total.add(BigDecimal.valueOf(line.total()));
      largest = Math.max(largest, line.largest());
    }
    return new TargetLines(objective, lines, List.copyOf(buildUps), total.doubleValue(), largest);
  }

  /** A plane over readings in one line is not tilted across it. */
  private static TargetPlane line(
      List<TargetReading> readings, List<Integer> its, TargetObjective objective, double cap) {
    try {
      return TargetPlane.over(
          its.stream().map(i -> readings.get(i).at(0, readings.get(i).y())).toList(),
          objective,
          cap);
    } catch (NoTargetException none) {
      throw none.among(its);
    }
  }
}
