package sheathwright.repl.shell;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles.Lookup;
import java.lang.invoke.MethodType;
import java.util.Set;

/**
 * What stands in the place of the calls that would end the program: they end the line. Only classes
 * of snippets call this, which were changed so before they were loaded.
 */
public final class Exits {

  private Exits() {}

  /** Whether an exception's class is that of a line that wanted to end the program. */
  public static boolean isEnding(String className) {
    return className.equals(LineEnded.class.getName());
  }

  /** In place of {@code System.exit}. */
  public static void ended(int status) {
    LineEnded ended = new LineEnded(status);
    Lines.here().ended(status);
    throw ended;
  }

  /** In place of {@code exit} and {@code halt} of a {@link Runtime}. */
  public static void ended(Runtime runtime, int status) {
    ended(status);
  }

  /** In place of a look-up, which may be one of {@code System.exit}. */
  public static MethodHandle findStatic(Lookup lookup, Class<?> owner, String name, MethodType type)
      throws ReflectiveOperationException {
    return owner == System.class && name.equals("exit")
        ? lookup.findStatic(Exits.class, "ended", type)
        : lookup.findStatic(owner, name, type);
  }

  /** In place of a look-up, which may be one of {@code exit} or {@code halt}. */
  public static MethodHandle findVirtual(
      Lookup lookup, Class<?> owner, String name, MethodType type)
      throws ReflectiveOperationException {
    return owner == Runtime.class && Set.of("exit", "halt").contains(name)
        ? lookup.findStatic(Exits.class, "ended", type.insertParameterTypes(0, Runtime.class))
        : lookup.findVirtual(owner, name, type);
  }

  /** Raised where the program would have ended; no line that catches exceptions catches it. */
  static final class LineEnded extends Error {

    private static final long serialVersionUID = 1;

    LineEnded(int status) {
      super("the line ended with status " + status + "; the session goes on (leave it with exit)");
    }
  }
}
