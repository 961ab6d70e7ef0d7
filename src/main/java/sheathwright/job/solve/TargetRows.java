package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import sheathwright.catalog.Numbers;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Headings;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.leveling.target.TargetReading;

/** The lines of a list of readings: where, how high, and how much may be built up there. */
final class TargetRows {

  private static final List<String> PLACE = List.of("x_in", "y_in", "z_in");
  private static final List<String> KNOWN = List.of("x_in", "y_in", "z_in", "lo_in", "hi_in");
  private static final double FARTHEST = 10_000;
  private static final double THICKEST = 1_000;

  private final CsvFile file;
  private final List<Problem> problems = new ArrayList<>();

  private TargetRows(CsvFile file) {
    this.file = file;
  }

  /**
   * The readings of a table, one for each line.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  static List<TargetReading> of(CsvFile file) {
    return new TargetRows(file).rows();
  }

  private List<TargetReading> rows() {
    PLACE.stream()
        .filter(column -> !file.header().contains(column))
        .forEach(column -> problem(1, column, "this column is missing; " + known()));
    problems.addAll(Headings.problems(file, KNOWN, heading -> !isMeant(heading), known()));
    if (file.lines().isEmpty()) {
      problem(0, "", "it has no lines under its heading");
    }
    raise();
    List<TargetReading> readings = file.lines().stream().map(this::reading).toList();
    raise();
    return readings;
  }

  /** Notes may stand in any column; one in inches, or nearly named as ours, is a slip. */
  private static boolean isMeant(String heading) {
    return heading.endsWith("_in") || KNOWN.contains(heading + "_in");
  }

  private static String known() {
    return "the table has " + String.join(", ", KNOWN) + ", and notes in columns of other names";
  }

  private TargetReading reading(CsvFile.Line line) {
    double x = number(line, "x_in", 0, -FARTHEST, FARTHEST, true);
    double y = number(line, "y_in", 0, -FARTHEST, FARTHEST, true);
    double z = number(line, "z_in", 0, -FARTHEST, FARTHEST, true);
    double least = number(line, "lo_in", 0, 0, THICKEST, false);
    double most = number(line, "hi_in", TargetReading.UNLIMITED, 0, THICKEST, false);
    if (most < least) {
      problem(
          line.number(),
          "hi_in",
          "%s is given, less than lo_in, which is %s"
              .formatted(cell(line, "hi_in"), cell(line, "lo_in")));
    }
    return new TargetReading("line " + line.number(), x, y, z, least, Math.max(least, most));
  }

  private double number(
      CsvFile.Line line,
      String column,
      double blank,
      double least,
      double most,
      boolean isRequired) {
    String text = cell(line, column);
    if (text.isEmpty()) {
      if (isRequired) {
        problem(line.number(), column, "it is empty");
      }
      return blank;
    }
    try {
      double number = Numbers.read(file.readable(text), Units.INCH);
      if (number < least || number > most) {
        problem(
            line.number(),
            column,
            "%s is given; it must be from %s to %s"
                .formatted(text, Shown.plain(least), Shown.plain(most)));
      } else {
        return number;
      }
    } catch (RefusedException unreadable) {
      problem(line.number(), column, unreadable.getMessage());
    }
    return blank;
  }

  private String cell(CsvFile.Line line, String column) {
    int index = file.header().indexOf(column);
    return index < 0 ? "" : line.cells().get(index).strip();
  }

  private void problem(long line, String column, String message) {
    problems.add(new Problem(file.name(), line, column, message));
  }

  private void raise() {
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }
}
