package sheathwright.leveling.target;

import java.math.BigDecimal;
import java.util.List;
import sheathwright.figure.RefusedException;

/**
 * The flat plane over the readings of a roof plane that needs the least build-up.
 *
 * <p>It lies on or above all of the old wood and within every bound. Of equally good planes it is
 * the one whose other objective is least, then the one least steep across the rafters, then the one
 * least steep up the slope, both against the string. Each reading counts alike, however much of the
 * roof it stands for.
 *
 * @param objective what it makes least
 * @param height above the string where x and y are 0, in inches
 * @param across rise for each inch across the rafters
 * @param up rise for each inch up the slope
 * @param buildUps of each reading, in inches
 * @param total of all build-ups, in inches
 * @param largest of them, in inches
 */
public record TargetPlane(
    TargetObjective objective,
    double height,
    double across,
    double up,
    List<Double> buildUps,
    double total,
    double largest) {

  /** Forty stations on each of five hundred rafters; more is a table gone wrong. */
  private static final int MOST_READINGS = 20_000;

  /**
   * The plane over some readings, exact to a millionth of an inch.
   *
   * @param readings at least one
   * @param cap no build-up is to be more, in inches; {@link TargetReading#UNLIMITED} if there is
   *     none
   * @throws NoTargetException if no plane meets every bound
   * @throws RefusedException if there are no readings, more than 20,000, or the cap is below zero
   */
  public static TargetPlane over(
      List<TargetReading> readings, TargetObjective objective, double cap) {
    if (readings.isEmpty() || readings.size() > MOST_READINGS) {
      throw new RefusedException(
          "%s readings are given; it must be from 1 to 20000".formatted(readings.size()));
    }
    if (!(cap >= 0)) {
      throw new RefusedException(
          "the cap on build-up is %s in; it must be 0 or more".formatted(TargetReading.said(cap)));
    }
    TargetFrame frame = new TargetFrame(readings, cap);
    TargetSearch search = new TargetSearch(frame);
    TargetSearch.Found found = search.found(objective);
    BigDecimal[] surface = TargetVertex.of(frame, found);
    List<BigDecimal> buildUps = TargetVertex.buildUps(frame, surface);
    if (!TargetCheck.isWithinBounds(frame, buildUps)
        || !TargetCheck.isBest(frame, objective, found.rows(), frame.seen(surface))) {
      throw search
          .clash()
          .<RuntimeException>map(clash -> clash)
          .orElseGet(() -> new IllegalStateException("the target found does not pass its check"));
    }
    return new TargetPlane(
        objective,
        surface[0].doubleValue(),
        surface[1].doubleValue(),
        surface[2].doubleValue(),
        buildUps.stream().map(BigDecimal::doubleValue).toList(),
        buildUps.stream().reduce(BigDecimal.ZERO, BigDecimal::add).doubleValue(),
        buildUps.stream().reduce(BigDecimal.ZERO, BigDecimal::max).doubleValue());
  }

  /** Its height above the string, in inches. */
  public double at(double x, double y) {
    return height + across * x + up * y;
  }
}
