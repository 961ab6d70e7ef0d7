package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;

/** The lines of a list of pieces: lengths, how many, and what for. */
final class PieceRows {

  private static final double SHORTEST = 1.0 / 64;
  private static final double LONGEST = 10_000;
  private static final int MOST = 5_000;

  /**
   * One line.
   *
   * @param line its number in the file
   * @param lengths in inches, in the order of the columns asked for
   * @param count how many alike
   * @param label what for, perhaps empty
   */
  record Alike(long line, List<Double> lengths, int count, String label) {}

  private static final Field<Figure<Ratio>> COUNT =
      Field.whole("count", "How many alike", Units.RATIO, 0, MOST).ifKnown();
  private static final Field<Choice<String>> LABEL = Field.text("label", "What for").ifKnown();
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private PieceRows() {}

  /** A column of lengths. */
  static Field<Figure<Length>> length(String name, String label) {
    return Field.number(name, label, Units.INCH, SHORTEST, LONGEST);
  }

  /**
   * The lines of a table.
   *
   * @param lengths that it must have; {@code count} and {@code label} may be left out
   * @throws ProblemsException with everything that is wrong with it
   */
  static List<Alike> of(CsvFile file, List<Field<Figure<Length>>> lengths) {
    List<Field<?>> fields = new ArrayList<>(lengths);
    fields.add(COUNT);
    fields.add(LABEL);
    TableReader reader = new TableReader();
    List<Row> rows = reader.rows(file, fields);
    reader.raiseProblems();
    return rows.stream()
        .map(
            row ->
                new Alike(
                    row.line().number(),
                    lengths.stream().map(length -> row.of(length).value()).toList(),
                    (int) row.or(COUNT, ONE).value(),
                    row.has(LABEL) ? row.of(LABEL).value() : ""))
        .filter(row -> row.count() > 0)
        .toList();
  }

  /** What is said of a piece that no stock gives. */
  static ProblemsException cannotBeCut(CsvFile file, Alike row, String why) {
    String piece = row.label().isEmpty() ? "this piece" : row.label();
    return new ProblemsException(
        List.of(new Problem(file.name(), row.line(), "", piece + " cannot be cut: " + why)));
  }
}
