package sheathwright.cutting.program;

/** A plan does not do what its order asks. */
public final class WrongPlanException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public WrongPlanException(String fault) {
    super(fault);
  }
}
