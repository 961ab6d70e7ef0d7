package sheathwright.cli.pipe;

/**
 * Which of the standard streams end at a terminal. The launcher says it, for Java knows only
 * whether input and output both do.
 */
final class Terminals {

  private static final String PROPERTY = "sheathwright.terminals";

  private Terminals() {}

  static boolean hasOut() {
    return has("out");
  }

  static boolean hasErr() {
    return has("err");
  }

  private static boolean has(String stream) {
    String told = System.getProperty(PROPERTY);
    return told == null ? System.console() != null : told.contains(stream);
  }
}
