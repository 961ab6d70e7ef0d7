package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Shown;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.leveling.target.NoTargetException;
import sheathwright.leveling.target.TargetLines;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetPlane;
import sheathwright.leveling.target.TargetReading;

/** Readings on sagged rafters, and the build-up of each under the surface that needs least. */
final class PlaneLeveler {

  static final Map<String, String> PRESETS = presets();

  private static final List<String> OBJECTIVES =
      Stream.of(TargetObjective.values()).map(TargetObjective::word).toList();
  private static final String PLANE = "plane";
  private static final String LINES = "lines";
  private static final double THICKEST = 1_000;

  private PlaneLeveler() {}

  private static Map<String, String> presets() {
    Map<String, String> presets = new LinkedHashMap<>();
    presets.put("objective", TargetObjective.TOTAL.word());
    presets.put("cap_in", "");
    presets.put("target", PLANE);
    return presets;
  }

  static SolvedTable leveled(CsvFile file, SolverOptions options) {
    TargetObjective objective =
        TargetObjective.values()[OBJECTIVES.indexOf(options.word("objective", OBJECTIVES))];
    boolean isPlane = options.word("target", List.of(PLANE, LINES)).equals(PLANE);
    double cap = options.numberOr(TargetReading.UNLIMITED, "cap_in", 0, THICKEST);
    List<TargetReading> readings = TargetRows.of(file);
    try {
      if (isPlane) {
        TargetPlane plane = TargetPlane.over(readings, objective, cap);
        return answered(file, plane.buildUps(), plane.total(), plane.largest());
      }
      TargetLines lines = TargetLines.over(readings, objective, cap);
      return answered(file, lines.buildUps(), lines.total(), lines.largest());
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
    return new SolvedTable(
        header,
        lines,
        "total %s in, largest %s in, optimal".formatted(Shown.plain(total), Shown.plain(largest)),
        Optional.empty());
  }

  private static ProblemsException clash(CsvFile file, NoTargetException none) {
    List<Problem> problems = new ArrayList<>();
    problems.add(
        new Problem(
            file.name(),
            0,
            "",
            "infeasible: nothing straight meets these bounds together; the wood stays, and each of the others would have to give %s in"
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
