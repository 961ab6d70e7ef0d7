package sheathwright.cutting.stick;

/**
 * Pieces of one length that are wanted.
 *
 * @param length of the finished piece in the order's unit, 1 to {@link StickOrder#LONGEST}
 * @param count how many, 0 to {@link StickOrder#MOST_PIECES}
 */
public record StickPiece(long length, int count) {

  public StickPiece {
    StickOrder.require("piece length", length, 1, StickOrder.LONGEST);
    StickOrder.require("piece count", count, 0, StickOrder.MOST_PIECES);
  }
}
