package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;

/**
 * A board of an old deck.
 *
 * @param thickness net, measured at the thinnest board
 * @param edge the long edges
 * @param bending reference bending value F_b of the boards; 0 if not known
 * @param modulus modulus of elasticity E of the boards; 0 if not known
 */
public record DeckBoard(
    @Column(
            value = "thickness_in",
            least = DeckBoard.LEAST_IN,
            most = DeckBoard.MOST_IN,
            rule = DeckBoard.RULE)
        Figure<Length> thickness,
    @Column(value = "board_edge", preset = "square") OneOf<BoardEdge> edge,
    @Column(
            value = "bending_psi",
            preset = "0",
            least = 0,
            most = 5000,
            rule = "0 if it is not known")
        Figure<Stress> bending,
    @Column(
            value = "modulus_psi",
            preset = "0",
            least = 0,
            most = 3_000_000,
            rule = "0 if it is not known")
        Figure<Stress> modulus) {

  /** The range of a board's thickness, wherever one is a column. */
  static final double LEAST_IN = 0.25;

  static final double MOST_IN = 6;
  static final String RULE = "net; a 1x board has 3/4";

  private static final Columns COLUMNS = Columns.of(DeckBoard.class);

  public DeckBoard {
    thickness = COLUMNS.let("thickness", thickness);
    edge = COLUMNS.let("edge", edge);
    bending = COLUMNS.let("bending", bending);
    modulus = COLUMNS.let("modulus", modulus);
  }

  /** A square board of this thickness, its strength not known unless it is said. */
  public static DeckBoard thickness(Figure<Length> given) {
    return new DeckBoard(given, null, null, null);
  }

  public DeckBoard edge(OneOf<BoardEdge> given) {
    return new DeckBoard(thickness, given, bending, modulus);
  }

  public DeckBoard bending(Figure<Stress> given) {
    return new DeckBoard(thickness, edge, given, modulus);
  }

  public DeckBoard modulus(Figure<Stress> given) {
    return new DeckBoard(thickness, edge, bending, given);
  }
}
