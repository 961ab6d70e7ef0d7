package sheathwright.repl.line;

/**
 * A line that cannot be taken as it was typed: one sentence for whoever typed it, and the place.
 */
public final class Unreadable extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final int at;

  Unreadable(int at, String why) {
    super(why, null, false, false);
    this.at = at;
  }

  /** Where in the line, counted from 0. */
  public int at() {
    return at;
  }
}
