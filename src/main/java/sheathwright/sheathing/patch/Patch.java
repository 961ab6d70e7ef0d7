package sheathwright.sheathing.patch;

import java.util.List;
import sheathwright.figure.Lengths;
import sheathwright.roof.Box;
import sheathwright.sheathing.place.PlaceKey;

/**
 * A part of the deck that is cut out and put in new.
 *
 * @param number place by place, from the eave up and from the left, beginning with 1
 * @param place of the old deck that it lies in
 * @param marks keys of the marks that it cures
 * @param box from support center to support center, gap included, in inches
 * @param left what its left end stands on
 * @param right what its right end stands on
 * @param pieces what is put in, from the left and from below
 * @param isNarrow whether it could not be made as large as the rules ask, and needs support on all
 *     its edges
 */
public record Patch(
    int number,
    PlaceKey place,
    List<String> marks,
    Box box,
    End left,
    End right,
    List<Piece> pieces,
    boolean isNarrow) {

  /** Where it lies, what its ends stand on, and which marks it cures. */
  @Override
  public String toString() {
    return "P%s in %s at %s along and %s up, %s by %s in, left %s, right %s; cures %s"
        .formatted(
            number,
            place,
            Lengths.inFeetAndInches(box.left()),
            Lengths.inFeetAndInches(box.bottom()),
            Lengths.inInches(box.width()),
            Lengths.inInches(box.height()),
            left.words(),
            right.words(),
            String.join(", ", marks));
  }

  /** What an end of a patch stands on. */
  public enum End {
    /** The middle of a support, shared with the old sheet. */
    SUPPORT("on a support"),
    /** The rake, hip or valley that the plane ends at. */
    EDGE("at the plane's edge"),
    /** A scab, because no support lies at the opening where it ends. */
    SCAB("on a scab");

    private final String words;

    End(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /**
   * One piece of a patch.
   *
   * @param box the module it fills, gap included; where the plane's edge is slanted it is cut again
   *     to the slant
   * @param area of it that lies on the plane, in square inches
   * @param width to be cut along the strength axis, in inches
   * @param height to be cut, in inches
   */
  public record Piece(Box box, double area, double width, double height) {}
}
