package sheathwright.framing.stop;

import sheathwright.figure.Option;

/** What the rafters meet at the top. */
public enum Ridge implements Option<Ridge> {
  /** Nobody has looked: taken as a board. */
  RIDGE_NOT_SEEN("unknown"),
  /** A board that the rafters lean on from both sides; it carries nothing. */
  ONLY_A_RIDGE_BOARD("board"),
  /** A beam that stands on posts or walls and carries the rafters. */
  RIDGE_BEAM("beam");

  private final String word;

  Ridge(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
