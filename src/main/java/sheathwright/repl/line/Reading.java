package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.List;

/** What became of a line: it was evaluated, or it is Java. */
public sealed interface Reading {

  /** The line as Java. */
  String java();

  /**
   * One thing that a line made.
   *
   * @param name the variable that holds it; empty if none does
   * @param value the thing itself
   * @param type under which Java knows it
   * @param java the statement that makes the same in Java
   * @param notes what the answer says beside: facts taken, presets assumed
   */
  record Made(String name, Object value, String type, String java, List<String> notes) {}

  /** A line that was evaluated from its tree. */
  record Direct(List<Made> made) implements Reading {

    @Override
    public String java() {
      return made.stream().map(Made::java).collect(joining(" "));
    }
  }

  /**
   * A line that the compiler has to take.
   *
   * @param notes what the answer says beside
   * @param places leads back to what was typed
   */
  record Compiled(String java, List<String> notes, Places places) implements Reading {}
}
