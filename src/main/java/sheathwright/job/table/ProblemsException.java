package sheathwright.job.table;

import java.util.List;

/** Everything that is wrong with what the user gave, said at once. */
public final class ProblemsException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<Problem> problems;

  public ProblemsException(List<Problem> problems) {
    super(String.join("\n", ProblemLines.of(problems)));
    this.problems = List.copyOf(problems);
  }

  /** The problems, in the order of the files and lines. */
  public List<Problem> problems() {
    return problems;
  }
}
