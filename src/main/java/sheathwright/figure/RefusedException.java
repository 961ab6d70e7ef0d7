package sheathwright.figure;

/**
 * Raised when the value of something refused is asked for. Its message is one line, meant for the
 * user.
 */
public final class RefusedException extends RuntimeException {

  private static final long serialVersionUID = 1;

  public RefusedException(String reason) {
    super(reason);
  }
}
