package sheathwright.repl.line;

import java.util.List;

/** What the reader sees of the session around it. */
public interface Around {

  /** Whether a variable of this name holds a value. */
  boolean has(String name);

  /** What a variable holds. */
  Object value(String name);

  /** Whether the user declared a method or a type of this name. */
  boolean isOwn(String name);

  /** Whether a variable was declared with a type, which it keeps. */
  boolean isTyped(String name);

  /** Classes whose static methods are words of the prompt. */
  List<Class<?>> words();
}
