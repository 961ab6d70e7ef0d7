package sheathwright.cutting.sheet;

/**
 * One straight saw cut through a whole part. It leaves the part before {@code at} and the part
 * beyond {@code at} plus the kerf; the second is missing where the kerf reaches the edge.
 *
 * @param part what is cut, as it lies on the uncut sheet
 * @param direction of the saw
 * @param at from the part's left (across) or lower (along) edge to the near side of the kerf, in
 *     units
 */
public record SheetCut(SheetPart part, Direction direction, long at) {

  /** Where the saw goes. */
  public enum Direction {
    /** Along the strength axis: divides the height. */
    ALONG,
    /** Across the strength axis: divides the width. */
    ACROSS
  }
}
