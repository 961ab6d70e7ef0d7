package sheathwright.repl;

import java.util.regex.Pattern;

/** Keeps a line from ending the program: a call that would end it ends the line instead. */
public final class Exits {

  private static final Pattern CALL =
      Pattern.compile(
          "\\b(?:java\\.lang\\.)?(?:System\\s*\\.\\s*exit|Runtime\\s*\\.\\s*getRuntime\\s*\\(\\s*\\)\\s*\\.\\s*(?:exit|halt))\\s*\\(");

  private Exits() {}

  static String caught(String line) {
    return CALL.matcher(line).replaceAll("sheathwright.repl.Exits.ended(");
  }

  /** Ends the line. */
  public static void ended(int status) {
    throw new LineEnded(status);
  }

  /** Raised where the program would have ended. */
  static final class LineEnded extends RuntimeException {

    private static final long serialVersionUID = 1;

    LineEnded(int status) {
      super("the line ended with status " + status + "; the session goes on (leave it with exit)");
    }
  }
}
