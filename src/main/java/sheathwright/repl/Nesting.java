package sheathwright.repl;

import sheathwright.figure.Shown;

/** How deep the brackets of a line stand in each other; the compiler takes only so many. */
final class Nesting {

  /** Far beyond what a person writes, far below where the compiler's stack ends. */
  private static final int DEEPEST = 200;

  private Nesting() {}

  static boolean isTooDeep(String text) {
    return depth(text) > DEEPEST;
  }

  /** What is said of a line that is too deep. */
  static String complaint(String text) {
    return Shown.text(
        "brackets stand %,d deep in each other; %s at most: give a part a name of its own, and use the name",
        depth(text), DEEPEST);
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
      } else if (c == '"') {
        quote = c;
      } else if ("([{".indexOf(c) >= 0) {
        deepest = Math.max(deepest, ++depth);
      } else if (")]}".indexOf(c) >= 0) {
        depth--;
      }
    }
    return deepest;
  }
}
