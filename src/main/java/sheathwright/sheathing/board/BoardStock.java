package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * Boards as they are bought and laid.
 *
 * @param face what one board covers, measured, without its tongue
 * @param gap left between boards
 * @param stock length of a board as bought
 */
public record BoardStock(
    @Column(value = "board_face_in", least = 1, most = 24, rule = "a 1x8 covers about 7-1/4")
        Figure<Length> face,
    @Column(value = "gap_in", preset = "0", least = 0, most = 6, rule = "0 for boards laid tight")
        Figure<Length> gap,
    @Column(value = "stock_ft", least = 2, most = 24, rule = "8 to 16 are usual")
        Figure<Length> stock) {

  private static final Columns COLUMNS = Columns.of(BoardStock.class);

  public BoardStock {
    face = COLUMNS.let("face", face);
    gap = COLUMNS.let("gap", gap);
    stock = COLUMNS.let("stock", stock);
  }

  /**
   * Boards that cover this much, laid tight unless a gap is said; their length is still to be said.
   */
  public static BoardStock face(Figure<Length> given) {
    return new BoardStock(given, null, null);
  }

  public BoardStock gap(Figure<Length> given) {
    return new BoardStock(face, given, stock);
  }

  public BoardStock stock(Figure<Length> given) {
    return new BoardStock(face, gap, given);
  }
}
