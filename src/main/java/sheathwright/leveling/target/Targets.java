package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * Targets whose readings are figures, so that a workbook can say when they no longer hold.
 *
 * <p>Does not cover whether the old rafters may be left in place, or how the build-up is made.
 */
public final class Targets {

  private static final Source SOLVED = Source.derived("least build-up, by linear program");

  private Targets() {}

  /**
   * The flat plane over a roof plane's readings that needs the least build-up.
   *
   * @param plane what the roof plane is called, in snake case
   * @param cap no build-up is to be more, if there is such a limit
   * @throws NoTargetException if no plane meets every bound
   * @see TargetPlane
   */
  public static LevelTarget plane(
      String plane,
      List<TargetPoint> points,
      OneOf<TargetObjective> objective,
      Optional<Figure<Length>> cap) {
    Reading reading = new Reading();
    Asked asked = asked(points, objective, cap, reading);
    TargetPlane found = TargetPlane.over(asked.readings(), asked.objective(), asked.cap());
    Surface solved = new Surface(found.buildUps(), found.total(), found.largest());
    return answered(reading.solution("target_plane_of_" + plane), points, solved);
  }

  /**
   * A straight line over each rafter of a roof plane that needs the least build-up.
   *
   * @param plane what the roof plane is called, in snake case
   * @param cap no build-up is to be more, if there is such a limit
   * @throws NoTargetException if on some rafter no line meets every bound
   * @see TargetLines
   */
  public static LevelTarget lines(
      String plane,
      List<TargetPoint> points,
      OneOf<TargetObjective> objective,
      Optional<Figure<Length>> cap) {
    Reading reading = new Reading();
    Asked asked = asked(points, objective, cap, reading);
    TargetLines found = TargetLines.over(asked.readings(), asked.objective(), asked.cap());
    Surface solved = new Surface(found.buildUps(), found.total(), found.largest());
    return answered(reading.solution("target_lines_of_" + plane), points, solved);
  }

  /**
   * The string itself, whatever build-up it needs; where the wood stands above it, that is below
   * zero, and the wood is planed down.
   *
   * @param plane what the roof plane is called, in snake case
   * @throws RefusedException if a build-up lies beyond a bound or the cap: the string moves for
   *     none
   */
  public static LevelTarget string(
      String plane,
      List<TargetPoint> points,
      OneOf<TargetObjective> objective,
      Optional<Figure<Length>> cap) {
    Reading solving = new Reading();
    Asked asked = asked(points, objective, cap, solving);
    List<Double> buildUps = new ArrayList<>();
    for (TargetReading reading : asked.readings()) {
      double buildUp = 0 - reading.z();
      double most = Math.min(reading.most(), asked.cap());
      if (buildUp > most || buildUp < reading.least() && reading.least() > 0) {
        throw new RefusedException(
            "%s: the string calls for %s in of build-up, outside its limits; bring the rafters to lines or a plane"
                .formatted(reading.name(), Shown.plain(buildUp)),
            List.of(points.get(buildUps.size()).z()));
      }
      buildUps.add(buildUp);
    }
    double total = buildUps.stream().mapToDouble(each -> Math.max(0, each)).sum();
    double largest = buildUps.stream().mapToDouble(each -> Math.max(0, each)).max().orElse(0);
    return answered(
        solving.solution("target_string_of_" + plane),
        points,
        new Surface(buildUps, total, largest));
  }

  /** What a target comes to, in inches. */
  private record Surface(List<Double> buildUps, double total, double largest) {}

  /** What a target is asked for, as plain values in inches. */
  private record Asked(List<TargetReading> readings, TargetObjective objective, double cap) {}

  private static Asked asked(
      List<TargetPoint> points,
      OneOf<TargetObjective> objective,
      Optional<Figure<Length>> cap,
      Reading reading) {
    return new Asked(
        points.stream().map(point -> point.plain(reading)).toList(),
        reading.word("objective", objective),
        cap.map(most -> reading.number("cap on build-up", most, Units.INCH))
            .orElse(TargetReading.UNLIMITED));
  }

  private static LevelTarget answered(Solution solution, List<TargetPoint> points, Surface solved) {
    List<Figure<Length>> buildUps =
        solved.buildUps().stream()
            .map(inches -> solution.figure("build_up_in", inches, Units.INCH, SOLVED))
            .toList();
    Roll roll =
        Roll.of(
            solution.name() + "_readings",
            "the readings",
            IntStream.range(0, points.size()).boxed().toList(),
            Roll.<Integer>column("reading", i -> Choice.literal(points.get(i).name())),
            Roll.column("x_in", i -> points.get(i).x().in(Units.INCH)),
            Roll.column("y_in", i -> points.get(i).y().in(Units.INCH)),
            Roll.column("z_in", i -> points.get(i).z().in(Units.INCH)),
            Roll.column("build_up_in", buildUps::get));
    return new LevelTarget(
        buildUps,
        roll,
        solution.figure("total_build_up_in", solved.total(), Units.INCH, SOLVED),
        solution.figure("largest_build_up_in", solved.largest(), Units.INCH, SOLVED),
        solution.word("target_status", "optimal", SOLVED));
  }
}
