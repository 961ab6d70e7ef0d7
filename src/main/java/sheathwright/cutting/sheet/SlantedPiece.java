package sheathwright.cutting.sheet;

/**
 * A right trapezoid: one end square, the other slanted. A half turn makes a piece of the right hand
 * one of the left with bottom and top exchanged; it is still the same piece.
 *
 * @param bottom length of the lower edge along the strength axis, 1 to 1 000 000 000 units
 * @param top length of the upper edge, unlike the bottom, 1 to 1 000 000 000 units
 * @param height across the strength axis, 1 to 1 000 000 000 units
 * @param hand which end is slanted
 */
public record SlantedPiece(long bottom, long top, long height, Hand hand) {

  /** The slanted end, seen on the face with the bottom edge below. */
  public enum Hand {
    LEFT,
    RIGHT
  }

  /**
   * @throws IllegalArgumentException if a length is out of range or the piece is a rectangle
   */
  public SlantedPiece {
    SheetOrder.checkSize("slanted piece", bottom, height);
    SheetOrder.checkSize("slanted piece", top, height);
    if (bottom == top) {
      throw new IllegalArgumentException("a slanted piece has unlike bottom and top: " + bottom);
    }
  }

  /** How far the slanted end leans to the right from bottom to top, once it is on the right. */
  long lean() {
    return hand == Hand.RIGHT ? top - bottom : bottom - top;
  }

  /** The shorter of both edges. */
  long shorter() {
    return Math.min(bottom, top);
  }

  /** The rectangle that it is cut out of when it has no partner. */
  public SheetPiece rectangle() {
    return new SheetPiece(Math.max(bottom, top), height, 1);
  }
}
