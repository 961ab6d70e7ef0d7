package sheathwright.repl.line;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Where a place in the Java of a line stands in the line as it was typed. */
public final class Places {

  private final NavigableMap<Integer, Integer> typed = new TreeMap<>(Map.of(0, 0));

  Places() {}

  void put(int inJava, int inTyped) {
    typed.put(inJava, inTyped);
  }

  /** All of another text's places, which stands in this one from a place on. */
  void putAll(int from, Places inside) {
    inside.typed.forEach((inJava, inTyped) -> typed.put(from + inJava, inTyped));
  }

  /** The place in the line as typed. */
  public int typed(int inJava) {
    Map.Entry<Integer, Integer> before = typed.floorEntry(inJava);
    return before.getValue() + inJava - before.getKey();
  }
}
