package sheathwright.repl.line;

import java.util.List;

/** Which bracket belongs to which. */
final class Brackets {

  /** As deep as the compiler is given. */
  private static final int DEEPEST = 200;

  private Brackets() {}

  /** The bracket that closes the one at a place; -1 if none does. */
  static int closing(List<Token> tokens, int open) {
    int depth = 0;
    for (int i = open; i < tokens.size(); i++) {
      depth += step(tokens.get(i));
      if (depth == 0) {
        return i;
      }
    }
    return -1;
  }

  /** The next comma between two places that stands in no brackets of its own; the end if none. */
  static int comma(List<Token> tokens, int from, int to) {
    int depth = 0;
    for (int i = from; i < to; i++) {
      depth += step(tokens.get(i));
      if (depth == 0 && tokens.get(i).is(",")) {
        return i;
      }
    }
    return to;
  }

  /** Whether every bracket has its partner. */
  static boolean close(List<Token> tokens) {
    int depth = 0;
    for (Token token : tokens) {
      depth += step(token);
      if (depth < 0) {
        return false;
      }
    }
    return depth == 0;
  }

  /**
   * Lets a line through that is not nested too deep.
   *
   * @throws Unreadable if it is
   */
  static void checkDepth(List<Token> tokens) {
    int depth = 0;
    for (Token token : tokens) {
      depth += step(token);
      if (depth > DEEPEST) {
        throw new Unreadable(
            token.from(),
            "more than %s brackets stand inside one another here; give the inner part a name first: part = ..."
                .formatted(DEEPEST));
      }
    }
  }

  private static int step(Token token) {
    return token.is("(") || token.is("[") || token.is("{")
        ? 1
        : token.is(")") || token.is("]") || token.is("}") ? -1 : 0;
  }
}
