package sheathwright.repl.shell;

import java.lang.StackWalker.StackFrame;
import java.util.Objects;
import sheathwright.figure.RefusedException;

/** What the lines of a session can ask of their session while they run. */
public interface Lines {

  /** The value of a variable that the compiler does not know. */
  <T> T value(String name);

  /** Takes what the next line of a block made. */
  void take(Kept<?> kept);

  /** Hears that a line wants to end the program. */
  void ended(int status);

  /**
   * The session whose line is calling: it is bound to the loader of the line's class.
   *
   * @throws RefusedException if no line of a session is calling
   */
  static Lines here() {
    LineThread.check();
    return StackWalker.getInstance(StackWalker.Option.RETAIN_CLASS_REFERENCE)
        .walk(
            frames ->
                frames
                    .map(StackFrame::getDeclaringClass)
                    .map(SnippetLoader::linesOf)
                    .filter(Objects::nonNull)
                    .findFirst())
        .orElseThrow(() -> new RefusedException("this can be asked only by a line of a session"));
  }
}
