package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * Old boards as they are found.
 *
 * @param thickness net, of the thinnest board
 * @param gap widest between two boards
 * @param hole widest across a knot hole or an old opening
 */
public record OldBoards(
    @Column(
            value = "thickness_in",
            least = DeckBoard.LEAST_IN,
            most = DeckBoard.MOST_IN,
            rule = DeckBoard.RULE)
        Figure<Length> thickness,
    @Column(value = "gap_in", least = 0, most = 12, rule = "the widest one") Figure<Length> gap,
    @Column(value = "hole_in", preset = "0", least = 0, most = 48, rule = "0 if there is none")
        Figure<Length> hole) {

  private static final Columns COLUMNS = Columns.of(OldBoards.class);

  public OldBoards {
    thickness = COLUMNS.let("thickness", thickness);
    gap = COLUMNS.let("gap", gap);
    hole = COLUMNS.let("hole", hole);
  }

  /**
   * Boards of this thickness without holes unless one is said; the widest gap is still to be said.
   */
  public static OldBoards thickness(Figure<Length> given) {
    return new OldBoards(given, null, null);
  }

  public OldBoards gap(Figure<Length> given) {
    return new OldBoards(thickness, given, hole);
  }

  public OldBoards hole(Figure<Length> given) {
    return new OldBoards(thickness, gap, given);
  }
}
