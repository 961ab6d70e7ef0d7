package sheathwright.job.fill;

import java.util.List;
import sheathwright.figure.Traced;
import sheathwright.job.table.Problem;
import sheathwright.job.table.RowSource;

/**
 * One line of a table, filled.
 *
 * @param line as it came
 * @param arguments one for each parameter; empty if they could not be read
 * @param results one for each result, perhaps refused; empty if the arguments could not be read
 * @param problems everything wrong with this line
 * @param error the same in one line, with what is wrong with the headings, or empty
 */
public record FilledRow(
    RowSource.Line line,
    List<Traced> arguments,
    List<Traced> results,
    List<Problem> problems,
    String error) {

  /** Whether no result is given: all are refused together. */
  public boolean isRefused() {
    return results.stream().allMatch(FilledRow::isRefused);
  }

  /** Whether some results are given and others are refused. */
  public boolean isAnsweredInPart() {
    return !isRefused() && results.stream().anyMatch(FilledRow::isRefused);
  }

  static boolean isRefused(Traced result) {
    return result.refusal().filter(refusal -> !refusal.isAnswer()).isPresent();
  }
}
