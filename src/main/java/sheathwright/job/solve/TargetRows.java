package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.leveling.target.TargetReading;

/** The lines of a list of readings: where, how high, and how much may be built up there. */
final class TargetRows {

  private static final double FARTHEST = 10_000;
  private static final double THICKEST = 1_000;

  private static final Field<Figure<Length>> X = place("x_in", "From the left");
  private static final Field<Figure<Length>> Y = place("y_in", "From the eave");
  private static final Field<Figure<Length>> Z = place("z_in", "Height");
  private static final Field<Figure<Length>> LEAST = bound("lo_in", "Build-up at least");
  private static final Field<Figure<Length>> MOST = bound("hi_in", "Build-up at most");
  private static final List<Field<?>> FIELDS = List.of(X, Y, Z, LEAST, MOST);
  private static final Figure<Length> NONE = Figure.of(0, Units.INCH);

  private TargetRows() {}

  private static Field<Figure<Length>> place(String name, String label) {
    return Field.number(name, label, Units.INCH, -FARTHEST, FARTHEST);
  }

  private static Field<Figure<Length>> bound(String name, String label) {
    return Field.number(name, label, Units.INCH, 0, THICKEST).ifKnown();
  }

  /**
   * The readings of a table, one for each line.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  static List<TargetReading> of(CsvFile file) {
    TableReader reader = new TableReader();
    List<Row> rows =
        reader.rows(file, FIELDS, heading -> !isMeant(heading), "notes in columns of other names");
    for (Row row : rows) {
      Figure<Length> least = row.or(LEAST, NONE);
      Figure<Length> most = row.of(MOST);
      if (least != null && most != null && most.value() < least.value()) {
        String message = "%s is given, less than lo_in, which is %s";
        reader.problem(file, row, MOST, message.formatted(most, least));
      }
    }
    reader.raiseProblems();
    List<TargetReading> readings = new ArrayList<>();
    for (Row row : rows) {
      readings.add(
          new TargetReading(
              "line " + row.line().number(),
              row.of(X).value(),
              row.of(Y).value(),
              row.of(Z).value(),
              row.or(LEAST, NONE).value(),
              row.has(MOST) ? row.of(MOST).value() : TargetReading.UNLIMITED));
    }
    return readings;
  }

  /** The headings under which numbers stand; what stands under others is a note. */
  static List<String> headings() {
    return FIELDS.stream().<String>map(Field::name).toList();
  }

  /** Notes may stand in any column; one in inches, or nearly named as ours, is a slip. */
  private static boolean isMeant(String heading) {
    return heading.endsWith("_in")
        || FIELDS.stream().anyMatch(field -> field.name().equals(heading + "_in"));
  }
}
