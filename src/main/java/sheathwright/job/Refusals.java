package sheathwright.job;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import sheathwright.figure.Origins;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/**
 * Gathers everything that is refused while a job is worked out and written down, each refusal once,
 * with the place in the job's tables that it comes from.
 */
public final class Refusals {

  private static final int MOST_NAMED = 3;

  private final Set<Problem> problems = new LinkedHashSet<>();

  /** Adds one refusal of a value. */
  public void add(Refusal refusal) {
    problems.add(problem(refusal.reason(), refusal.causes()));
  }

  /** Adds what is wrong with a table. */
  public void add(Problem problem) {
    problems.add(problem);
  }

  /** What the work yields; nothing if it is refused, and then the refusal is gathered. */
  public <T> Optional<T> tried(Supplier<T> work) {
    try {
      return Optional.of(work.get());
    } catch (RefusedException refused) {
      problems.add(problem(refused.getMessage(), refused.causes()));
    } catch (ProblemsException refused) {
      problems.addAll(refused.problems());
    }
    return Optional.empty();
  }

  /** Everything that was gathered. */
  Set<Problem> problems() {
    return problems;
  }

  /**
   * Refuses the job if anything was gathered.
   *
   * @throws ProblemsException with all of it, table by table and line by line
   */
  public void raise() {
    if (!problems.isEmpty()) {
      throw new ProblemsException(Problem.inOrder(problems));
    }
  }

  private static Problem problem(String reason, List<Traced> causes) {
    List<Source.Cell> cells =
        Origins.of(causes).stream().flatMap(input -> input.source().cell().stream()).toList();
    if (cells.isEmpty()) {
      return new Problem(JobTable.JOB.file(), 0, "", reason);
    }
    Source.Cell nearest = cells.get(0);
    boolean isSaid =
        cells.size() > 1
            || reason.contains(nearest.item())
            || nearest.column().equals(nearest.item());
    String said = isSaid ? reason : nearest.item() + ": " + reason;
    return new Problem(nearest.table(), nearest.line(), nearest.column(), said + from(cells));
  }

  /** Several inputs that together are refused, the nearest first. */
  private static String from(List<Source.Cell> cells) {
    if (cells.size() == 1) {
      return "";
    }
    List<String> named =
        cells.stream().map(cell -> "%s (%s)".formatted(cell.item(), cell.inWords())).toList();
    boolean isLong = named.size() > MOST_NAMED;
    int before = isLong ? MOST_NAMED : named.size() - 1;
    return "; from "
        + String.join(", ", named.subList(0, before))
        + " and "
        + (isLong ? "others" : named.get(before));
  }
}
