package sheathwright.repl.memory;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the variables of a session hold: of each the last good value, and, where it no longer
 * follows from what it is made from, why.
 */
public final class Values {

  private final Map<String, Value> byName = new LinkedHashMap<>();
  private final Map<String, Stale> stale = new HashMap<>();
  private final Map<String, Long> nanos = new HashMap<>();

  /**
   * A value.
   *
   * @param object the thing itself
   * @param type its type, as a line of Java writes it
   */
  public record Value(Object object, String type) {

    /** The line that declares a variable with this value. */
    public String declaration(String name) {
      return "%s %s = sheathwright.repl.shell.Lines.here().value(\"%s\");"
          .formatted(type, name, name);
    }
  }

  /**
   * Why a value is an old one.
   *
   * @param reason what is said of it
   * @param isWaiting whether it could be computed, and waits to be told
   */
  public record Stale(String reason, boolean isWaiting) {

    /** What could not be computed, for a reason whose first line says enough. */
    public static Stale failed(String reason) {
      String first = reason.lines().findFirst().orElse("");
      return new Stale(first.endsWith(";") ? first.substring(0, first.length() - 1) : first, false);
    }

    public static Stale madeFrom(String name) {
      return new Stale("made from %s, which is stale".formatted(name), false);
    }
  }

  public void put(String name, Value value) {
    byName.put(name, value);
    stale.remove(name);
  }

  public void remove(String name) {
    byName.remove(name);
    stale.remove(name);
    nanos.remove(name);
  }

  public boolean has(String name) {
    return byName.containsKey(name);
  }

  public Value of(String name) {
    return byName.get(name);
  }

  public Set<String> names() {
    return byName.keySet();
  }

  public void mark(String name, Stale why) {
    stale.put(name, why);
  }

  public Optional<Stale> stale(String name) {
    return Optional.ofNullable(stale.get(name));
  }

  /** How long its line took the last time. */
  public void took(String name, long time) {
    nanos.put(name, time);
  }

  public long nanos(String name) {
    return nanos.getOrDefault(name, 0L);
  }
}
