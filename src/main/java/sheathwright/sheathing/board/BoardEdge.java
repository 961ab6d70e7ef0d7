package sheathwright.sheathing.board;

import sheathwright.figure.Option;

/** The long edges of a deck board. */
public enum BoardEdge implements Option<BoardEdge> {
  /** Square or lapped: each board carries alone. */
  SQUARE,
  /** Each board leans on its neighbor. */
  TONGUE_AND_GROOVE
}
