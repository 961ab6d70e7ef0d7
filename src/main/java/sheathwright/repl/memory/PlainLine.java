package sheathwright.repl.memory;

import java.util.regex.Pattern;

/**
 * A line that is plainly whole: a call or a name, perhaps given to a name. Most lines are, and the
 * compiler need not be asked.
 */
public final class PlainLine {

  private static final Pattern SHAPE =
      Pattern.compile(
          "\\s*(?:(?:var\\s+)?[A-Za-z_]\\w*\\s*=\\s*)?(?!(?:if|for|while|switch|try|new|synchronized)\\b)[A-Za-z_][\\w.]*(?:\\([^;{}]*\\))?\\s*+;?\\s*+");

  private PlainLine() {}

  public static boolean is(String text) {
    String line = text.strip();
    return !line.contains("\n")
        && !line.contains("//")
        && !line.contains("/*")
        && SHAPE.matcher(line).matches()
        && closes(line);
  }

  /** The same line as a statement. */
  public static String statement(String text) {
    String line = text.strip();
    return line.endsWith(";") ? line : line + ";";
  }

  /** Whether every bracket and quote has its partner, in order. */
  public static boolean closes(String line) {
    int depth = 0;
    boolean isQuoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '\\' || c == '\'') {
        return false;
      }
      if (c == '"') {
        isQuoted = !isQuoted;
      } else if (!isQuoted) {
        depth += c == '(' ? 1 : c == ')' ? -1 : 0;
        if (depth < 0) {
          return false;
        }
      }
    }
    return depth == 0 && !isQuoted;
  }
}
