package sheathwright.job.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/**
 * Problems as they are printed: a line each, and where there are too many to read, some of each
 * kind and how many more there are.
 */
public final class ProblemLines {

  /** Lines that are read; more scroll away. */
  private static final int MOST = 40;

  /** What differs between two problems of one kind: what was given. */
  private static final Pattern GIVEN = Pattern.compile("\"[^\"]*\"|[^\\s\"]*\\d[^\\s\"]*");

  /** Problems that are alike but for their lines and what was given. */
  private record Kind(String file, String column, String message) {

    static Kind of(Problem problem) {
      String alike = GIVEN.matcher(problem.message()).replaceAll("");
      return new Kind(problem.file(), problem.column(), alike);
    }
  }

  private ProblemLines() {}

  /** The lines, in the order of the problems. */
  public static List<String> of(List<Problem> problems) {
    if (problems.size() <= MOST) {
      return problems.stream().map(Problem::toString).toList();
    }
    Map<Kind, Long> counts = new LinkedHashMap<>();
    problems.forEach(problem -> counts.merge(Kind.of(problem), 1L, Long::sum));
    long each = Math.max(1, MOST / counts.size());
    List<String> lines = new ArrayList<>();
    Map<Kind, Long> said = new LinkedHashMap<>();
    for (Problem problem : problems) {
      Kind kind = Kind.of(problem);
      boolean isSaid = said.getOrDefault(kind, 0L) < each && lines.size() < MOST;
      if (isSaid) {
        said.merge(kind, 1L, Long::sum);
        lines.add(problem.toString());
      }
    }
    Map<String, Long> left = new LinkedHashMap<>();
    counts.forEach(
        (kind, count) -> {
          long more = count - said.getOrDefault(kind, 0L);
          if (more > 0 && said.containsKey(kind)) {
            String column = kind.column().isEmpty() ? "" : ", column " + kind.column();
            left.merge(" of the same kind in " + kind.file() + column, more, Long::sum);
          } else if (more > 0) {
            left.merge(" of other kinds in " + kind.file(), more, Long::sum);
          }
        });
    left.forEach(
        (where, more) ->
            lines.add(Printable.line("and " + Shown.with(Units.RATIO, more) + " more" + where)));
    return lines;
  }
}
