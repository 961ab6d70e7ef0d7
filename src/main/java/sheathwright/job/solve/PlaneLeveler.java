package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.leveling.target.NoTargetException;
import sheathwright.leveling.target.TargetLines;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetPlane;
import sheathwright.leveling.target.TargetReading;

/** Readings on sagged rafters, and the build-up of each under the surface that needs least. */
final class PlaneLeveler {

  private static final SolverOption<Choice<TargetObjective>> OBJECTIVE =
      new SolverOption<>(
          Field.word("objective", "Least build-up", TargetObjective.class),
          TargetObjective.TOTAL.word());

  private static final SolverOption<Figure<Length>> CAP =
      new SolverOption<>(Field.number("cap_in", "Build-up at most", Units.INCH, 0, 1_000), "");

  private static final SolverOption<Choice<Surface>> TARGET =
      new SolverOption<>(
          Field.word("target", "Bring rafters to", Surface.class), Surface.PLANE.word());

  static final List<SolverOption<?>> OPTIONS = List.of(OBJECTIVE, CAP, TARGET);

  /** What the rafters are brought to. */
  private enum Surface implements Option<Surface> {
    /** One flat plane over all of them. */
    PLANE,
    /** A straight line over each, flat across or not. */
    LINES
  }

  private PlaneLeveler() {}

  static SolvedTable leveled(CsvFile file, SolverOptions options) {
    TargetObjective objective = options.of(OBJECTIVE).value();
    Surface surface = options.of(TARGET).value();
    double cap = options.numberIfGiven(CAP).orElse(TargetReading.UNLIMITED);
    List<TargetReading> readings = TargetRows.of(file);
    try {
      return switch (surface) {
        case PLANE -> {
          TargetPlane plane = TargetPlane.over(readings, objective, cap);
          yield answered(file, plane.buildUps(), plane.total(), plane.largest());
        }
        case LINES -> {
          TargetLines lines = TargetLines.over(readings, objective, cap);
          yield answered(file, lines.buildUps(), lines.total(), lines.largest());
        }
      };
    } catch (NoTargetException none) {
      throw clash(file, none);
    }
  }

  private static SolvedTable answered(
      CsvFile file, List<Double> buildUps, double total, double largest) {
    List<String> header = new ArrayList<>(file.header());
    header.add("build_up_in");
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i < buildUps.size(); i++) {
      List<String> cells = new ArrayList<>(file.lines().get(i).cells());
      cells.add(Shown.plain(buildUps.get(i)));
      lines.add(cells);
    }
    Set<String> notes = new HashSet<>(file.header());
    notes.removeAll(TargetRows.headings());
    return new SolvedTable(
        header,
        lines,
        "total %s in, largest %s in, optimal".formatted(Shown.plain(total), Shown.plain(largest)),
        Optional.empty(),
        notes);
  }

  private static ProblemsException clash(CsvFile file, NoTargetException none) {
    List<Problem> problems = new ArrayList<>();
    problems.add(
        new Problem(
            file.name(),
            0,
            "",
            "nothing straight fits all of these limits; the wood stays, and each of the others would have to give %s in"
                .formatted(Shown.plain(none.lacking()))));
    for (NoTargetException.Clash clash : none.clashes()) {
      String column =
          switch (clash.side()) {
            case WOOD -> "z_in";
            case LEAST -> "lo_in";
            case MOST -> "hi_in";
            case CAP -> "";
          };
      String bound =
          switch (clash.side()) {
            case WOOD -> "the wood stands at %s in";
            case LEAST -> "build-up of at least %s in";
            case MOST -> "build-up of at most %s in";
            case CAP -> "cap_in=%s";
          };
      problems.add(
          new Problem(
              file.name(),
              file.lines().get(clash.reading()).number(),
              column,
              bound.formatted(Shown.plain(clash.inches()))));
    }
    return new ProblemsException(problems);
  }
}
