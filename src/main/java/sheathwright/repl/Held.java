package sheathwright.repl;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * Variables that the compiler does not know: it would read every one of them again for each line
 * that it compiles. A block of lines declares those that it mentions, and hands back what it made.
 */
public final class Held {

  private static volatile Held current;

  private final Map<String, Kept<?>> byName = new LinkedHashMap<>();
  private BiConsumer<Integer, Kept<?>> made = (step, kept) -> {};
  private int done;

  Held() {}

  /** The value of a variable; for the lines of a block. */
  @SuppressWarnings("unchecked") // a block declares the type that the value was kept with
  public static <T> T value(String name) {
    return (T) current.byName.get(name).value();
  }

  /** Takes what the next line of a block made; for the lines of a block. */
  public static void take(Kept<?> kept) {
    current.made.accept(current.done, kept);
    current.done++;
  }

  /** Hears, from now on, what each line of a block makes. */
  void hear(BiConsumer<Integer, Kept<?>> heard) {
    current = this;
    done = 0;
    made = heard;
  }

  /** How many lines of the block have been run. */
  int done() {
    return done;
  }

  void put(String name, Kept<?> kept) {
    byName.put(name, kept);
  }

  boolean has(String name) {
    return byName.containsKey(name);
  }

  Object valueOf(String name) {
    return byName.get(name).value();
  }

  Set<String> names() {
    return byName.keySet();
  }

  /** The line that declares a variable with the value that is held. */
  String declaration(String name) {
    return "%s %s = sheathwright.repl.Held.value(\"%s\");"
        .formatted(byName.get(name).type(), name, name);
  }

  /** The compiler knows this one from now on. */
  void release(String name) {
    byName.remove(name);
  }

  /** Lets lines read what is held here. */
  void open() {
    current = this;
  }
}
