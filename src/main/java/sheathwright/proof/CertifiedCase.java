package sheathwright.proof;

import java.util.List;
import sheathwright.catalog.Result;
import sheathwright.job.table.Problem;

/**
 * One line of a table of cases: what a function must answer there, how nearly, and who says so.
 *
 * @param file the table's name
 * @param line the line in it
 * @param label what tells it from others in its table
 * @param lies where in the function's range
 * @param kind what the expected values were taken from
 * @param source standard, edition and clause, with its mark
 * @param tolerance how far a number may be off, as a share of what is expected
 * @param within how far it may be off in the result's own unit, where that is more
 * @param expected the results that it holds
 */
public record CertifiedCase(
    String file,
    long line,
    String label,
    CaseClass lies,
    CaseKind kind,
    String source,
    double tolerance,
    double within,
    List<Expected> expected) {

  /**
   * What stands under a result's heading.
   *
   * @param text as it is written there
   */
  public record Expected(Result result, String text) {}

  /** How far a number may be off. */
  double allowed(double number) {
    return Math.max(tolerance * Math.abs(number), within);
  }

  /** Something that is wrong at one of its columns. */
  Problem problem(String column, String message) {
    return new Problem(file, line, column, message);
  }

  /** The same, expecting something else of one result. */
  CertifiedCase expecting(Expected other) {
    List<Expected> spoiled =
        expected.stream().map(each -> each.result() == other.result() ? other : each).toList();
    return new CertifiedCase(file, line, label, lies, kind, source, tolerance, within, spoiled);
  }
}
