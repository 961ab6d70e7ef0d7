package sheathwright.cutting.sheet;

import java.util.List;

/**
 * One sheet or offcut and what is cut out of it.
 *
 * @param offcut index into the order's offcuts, or {@link #NEW}
 * @param pieces where each piece lies
 * @param cuts in the order of the saw; each is made on a part that the cuts before it left
 * @param rest the largest rectangle that the cuts leave over, or {@link SheetPart#NONE}
 */
public record CutSheet(int offcut, List<PlacedPiece> pieces, List<SheetCut> cuts, SheetPart rest) {

  /** A new sheet, not an offcut. */
  public static final int NEW = -1;

  public CutSheet {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
  }

  /** Whether it must be bought. */
  public boolean isNew() {
    return offcut == NEW;
  }
}
