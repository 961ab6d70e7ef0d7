package sheathwright.cutting;

/** A piece that no stock can give. */
public final class CannotBeCutException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final int piece;

  /**
   * @param piece index into the order's pieces
   * @param reason why, as a sentence for the user
   */
  public CannotBeCutException(int piece, String reason) {
    super(reason);
    this.piece = piece;
  }

  /** Index into the order's pieces. */
  public int piece() {
    return piece;
  }
}
