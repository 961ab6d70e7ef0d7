package sheathwright.sheathing.patch;

import sheathwright.figure.Option;

/** What is wrong with a place on the deck, in the trade's words. */
public enum Finding implements Option<Finding> {
  /** An awl goes in under hand pressure. */
  ROT('R', true),
  /** The plies part. */
  DELAMINATED('D', true),
  /** It gives underfoot. */
  SOFT('S', true),
  /** Edges or face stand up from wet. */
  SWOLLEN('W', true),
  /** A hole that the covering would bridge. */
  HOLE('H', true),
  /** Split, crushed or burned through. */
  BROKEN('B', true),
  /** It moves on its nails. */
  LOOSE('L', false),
  /** Edges butt and hump. */
  TIGHT('T', false),
  /** An end or edge without support. */
  UNSUPPORTED('U', false),
  /** Discolored or moldy, the wood sound. */
  STAIN('M', false),
  /** Thinner than is asked. */
  THIN('N', false),
  /** Two sheets lie too far apart. */
  GAP_WIDE('G', false),
  /** A screw does not hold. */
  PULLED('P', true);

  private final char letter;
  private final boolean isCutOut;

  Finding(char letter, boolean isCutOut) {
    this.letter = letter;
    this.isCutOut = isCutOut;
  }

  /** A letter of the word, for a drawing. */
  public char letter() {
    return letter;
  }

  /**
   * Whether the wood is cut out where nobody decided otherwise; else it is fastened, relieved or
   * supported where it is.
   */
  public boolean isCutOut() {
    return isCutOut;
  }
}
