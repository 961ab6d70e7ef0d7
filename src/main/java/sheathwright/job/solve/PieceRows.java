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
  record Row(long line, List<Double> lengths, int count, String label) {}

  private final CsvFile file;
  private final List<String> columns;
  private final List<Problem> problems = new ArrayList<>();

  private PieceRows(CsvFile file, List<String> columns) {
    this.file = file;
    this.columns = columns;
  }

  /**
   * The lines of a table.
   *
   * @param columns of lengths that it must have; {@code count} and {@code label} may be left out
   * @throws ProblemsException with everything that is wrong with it
   */
  static List<Row> of(CsvFile file, List<String> columns) {
    return new PieceRows(file, columns).rows();
  }

  private List<Row> rows() {
    List<String> known = new ArrayList<>(columns);
    known.addAll(List.of("count", "label"));
    String allowed = "the table has " + String.join(", ", known) + " and note";
    problems.addAll(Headings.problems(file, known, Headings::isNote, allowed));
    for (String column : columns) {
      if (!file.header().contains(column)) {
        problems.add(new Problem(file.name(), 1, column, "this column is missing; " + allowed));
      }
    }
    raise();
    List<Row> rows = new ArrayList<>();
    for (CsvFile.Line line : file.lines()) {
      List<Double> lengths = new ArrayList<>();
      for (String column : columns) {
        lengths.add(number(line, column, SHORTEST, LONGEST));
      }
      String count = cell(line, "count");
      double many = count.isBlank() ? 1 : number(line, "count", 0, MOST);
      if (many != Math.rint(many)) {
        problem(line, "count", count + " is not a whole number");
      }
      rows.add(new Row(line.number(), lengths, (int) many, cell(line, "label").strip()));
    }
    raise();
    return rows.stream().filter(row -> row.count() > 0).toList();
  }

  private double number(CsvFile.Line line, String column, double least, double most) {
    String text = cell(line, column);
    try {
      double number =
          Numbers.read(file.readable(text), column.equals("count") ? Units.RATIO : Units.INCH);
      if (number < least || number > most) {
        problem(
            line,
            column,
            "%s is given; it must be from %s to %s"
                .formatted(text.strip(), Shown.plain(least), Shown.plain(most)));
      }
      return number;
    } catch (RefusedException unreadable) {
      problem(line, column, text.isBlank() ? "it is empty" : unreadable.getMessage());
      return 1;
    }
  }

  private String cell(CsvFile.Line line, String column) {
    int index = file.header().indexOf(column);
    return index < 0 ? "" : line.cells().get(index);
  }

  private void problem(CsvFile.Line line, String column, String message) {
    problems.add(new Problem(file.name(), line.number(), column, message));
  }

  private void raise() {
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
  }

  /** What is said of a piece that no stock gives. */
  static ProblemsException cannotBeCut(CsvFile file, Row row, String why) {
    String piece = row.label().isEmpty() ? "this piece" : row.label();
    return new ProblemsException(
        List.of(new Problem(file.name(), row.line(), "", piece + " cannot be cut: " + why)));
  }
}
