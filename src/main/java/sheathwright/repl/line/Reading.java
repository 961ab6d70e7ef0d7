package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

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

  /** Text that is an answer as it stands. */
  record Told(String text) {

    @Override
    public String toString() {
      return text;
    }
  }

  /** Where a place in the Java of a line stands in the line as it was typed. */
  final class Places {

    private final NavigableMap<Integer, Integer> typed = new TreeMap<>(Map.of(0, 0));

    Places() {}

    void put(int inJava, int inTyped) {
      typed.put(inJava, inTyped);
    }

    /** The place in the line as typed. */
    public int typed(int inJava) {
      Map.Entry<Integer, Integer> before = typed.floorEntry(inJava);
      return before.getValue() + inJava - before.getKey();
    }
  }
}
