package sheathwright.figure;

import java.util.List;
import java.util.function.Supplier;

/**
 * Raised when the value of something refused is asked for. Its message is one line, meant for the
 * user.
 */
public final class RefusedException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<Traced> causes;

  public RefusedException(String reason) {
    this(reason, List.of());
  }

  /**
   * A refusal of certain values.
   *
   * @param reason one line, meant for the user
   * @param causes what was refused, or what the refused thing was solved for
   */
  public RefusedException(String reason, List<? extends Traced> causes) {
    super(reason);
    this.causes = List.copyOf(causes);
  }

  /** What was refused; empty where only the words are known. */
  public List<Traced> causes() {
    return causes;
  }

  /**
   * What a solver finds. It works on plain numbers, so a refusal of its own knows no figures; then
   * everything that it was to be solved for is the cause.
   */
  public static <T> T solvedFor(List<? extends Traced> inputs, Supplier<T> solver) {
    try {
      return solver.get();
    } catch (RefusedException refused) {
      throw refused.causes.isEmpty() ? new RefusedException(refused.getMessage(), inputs) : refused;
    }
  }
}
