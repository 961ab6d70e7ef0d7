package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.stream.Stream;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.repl.line.Reader;

/**
 * What the prompt says to one snippet.
 *
 * @param kind what became of the snippet
 * @param text what is shown; may be empty or many lines
 * @param line on which line of the snippet it failed, counted from 0
 */
record Answer(Kind kind, String text, int line) {

  Answer(Kind kind, String text) {
    this(kind, text, 0);
  }

  /** What is said of a value; the name is empty if no variable holds it. */
  static Answer of(String name, Object value) {
    if (value instanceof Traced traced && Shows.isRefused(traced)) {
      String reason = traced.refusal().get().reason();
      return new Answer(
          Kind.REFUSED,
          name.isEmpty() ? reason : Reader.saidName(name) + " has no value: " + reason);
    }
    return name.isEmpty()
        ? new Answer(Kind.SHOWN, Shows.expression(value))
        : new Answer(Kind.DEFINED, Shows.variable(name, value));
  }

  /** The same in lines of a width, each going on below its own beginning. */
  Answer wrapped(int width) {
    return new Answer(
        kind, text.lines().flatMap(each -> hung(each, width)).collect(joining("\n")), line);
  }

  private static Stream<String> hung(String line, int width) {
    if (line.length() <= width) {
      return Stream.of(line);
    }
    String indent = " ".repeat(line.length() - line.stripLeading().length());
    return Shown.wrapped(line.strip(), width, indent, indent + "  ").stream();
  }

  /** What became of a snippet. */
  enum Kind {
    /** It had a value, which is shown. */
    SHOWN,
    /** It defined something, which a script need not show. */
    DEFINED,
    /** It was computed, and the library refused to give it a value. */
    REFUSED,
    /** It could not be run. */
    FAILED
  }

  boolean isError() {
    return kind == Kind.REFUSED || kind == Kind.FAILED;
  }
}
