package sheathwright.repl;

import sheathwright.figure.Shown;

/**
 * A line that is more than the compiler takes: brackets that stand too deep in each other, or a
 * line that is not finished after very many.
 */
final class Outsize {

  /** Far beyond what a person writes, far below where the compiler's stack ends. */
  private static final int DEEPEST = 200;

  /**
   * Each line that is added is read with all before it, so a bracket left open costs their square.
   */
  private static final int MOST_LINES = 1_000;

  private Outsize() {}

  static boolean is(String text) {
    return depth(text) > DEEPEST || lines(text) > MOST_LINES;
  }

  /** What is said of a line that is too much. */
  static String complaint(String text) {
    int depth = depth(text);
    return depth > DEEPEST
        ? Shown.text(
            "brackets stand %,d deep in each other; %s at most: give a part a name of its own, and use the name",
            depth, DEEPEST)
        : Shown.text(
            "what begins here is not finished after %,d lines; is a bracket left open? Close it, or write the whole in smaller parts",
            MOST_LINES);
  }

  private static long lines(String text) {
    return text.strip().chars().filter(c -> c == '\n').count() + 1;
  }

  private static int depth(String text) {
    int depth = 0;
    int deepest = 0;
    char quote = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        if (c == '\\') {
          i++;
        } else if (c == quote) {
          quote = 0;
        }
      } else if (c == '"' && !isInchMark(text, i)) {
        quote = c;
      } else if ("([{".indexOf(c) >= 0) {
        deepest = Math.max(deepest, ++depth);
      } else if (")]}".indexOf(c) >= 0) {
        depth--;
      }
    }
    return deepest;
  }

  /** A quote right behind a number or a sign for a fraction opens no text. */
  private static boolean isInchMark(String text, int at) {
    return at > 0 && text.substring(at - 1, at).matches("\\p{N}");
  }
}
