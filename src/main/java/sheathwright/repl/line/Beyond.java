package sheathwright.repl.line;

/** Raised where a line goes beyond what is evaluated from its tree: it is Java's then. */
final class Beyond extends RuntimeException {

  private static final long serialVersionUID = 1;

  Beyond() {
    super("this is Java", null, false, false);
  }
}
