package sheathwright.job.table;

/**
 * Text as it may be printed: what would steer a terminal, or turn the direction of reading, is
 * shown as a code instead, such as {@code \u001b}.
 */
public final class Printable {

  private Printable() {}

  /** Text of several lines; the ends of lines stay. */
  public static String lines(String text) {
    StringBuilder printable = new StringBuilder();
    text.codePoints()
        .forEach(
            code -> {
              if (code != '\n' && steers(code)) {
                printable.append("\\u%04x".formatted(code));
              } else {
                printable.appendCodePoint(code);
              }
            });
    return printable.toString();
  }

  /** Text of one line: the end of a line is shown as a code too. */
  public static String line(String text) {
    return lines(text).replace("\n", "\\u000a");
  }

  /** Whether a table's cell may hold it: all but tabs and ends of lines are refused. */
  public static boolean isForeign(int code) {
    return steers(code) && code != '\n' && code != '\r' && code != '\t';
  }

  private static boolean steers(int code) {
    return switch (Character.getType(code)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          true;
      default -> code >= 0x202a && code <= 0x202e || code >= 0x2066 && code <= 0x2069;
    };
  }
}
