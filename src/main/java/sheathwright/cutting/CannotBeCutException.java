package sheathwright.cutting;

/** The pieces that are wanted cannot be cut from the stock that there is. */
public final class CannotBeCutException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final int piece;

  CannotBeCutException(int piece, String reason) {
    super(reason);
    this.piece = piece;
  }

  /** Index of the piece at fault in the order's pieces, or −1 where no single piece is. */
  public int piece() {
    return piece;
  }
}
