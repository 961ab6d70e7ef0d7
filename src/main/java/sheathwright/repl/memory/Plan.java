package sheathwright.repl.memory;

import java.util.HashMap;
import java.util.Map;
import sheathwright.figure.Shown;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Values.Stale;

/** Which variables a change carries along, and which keep their old value. */
public final class Plan {

  /** What took longer than a second is not run again without being asked for. */
  private static final long NANOS_AT_ONCE = 1_000_000_000;

  private final Definitions definitions;
  private final Values values;
  private final boolean isWaiting;
  private final Map<String, Boolean> isStale = new HashMap<>();

  /**
   * A plan from how things stand.
   *
   * @param isWaiting whether what takes long waits to be told
   */
  public Plan(Definitions definitions, Values values, boolean isWaiting) {
    this.definitions = definitions;
    this.values = values;
    this.isWaiting = isWaiting;
  }

  public Definitions definitions() {
    return definitions;
  }

  /** A line gives a name a value. */
  public void define(String name, String source) {
    definitions.put(name, source, true);
    isStale.put(name, madeFromStale(definitions.of(name)) != null);
  }

  /** Something that this is made from changes: why it stays as it is, or null if it follows. */
  public Stale carried(Definition each) {
    Stale stays = madeFromStale(each);
    if (stays == null && isWaiting && values.nanos(each.name()) > NANOS_AT_ONCE) {
      stays =
          new Stale(
              Shown.text(
                  "takes %.1f s to work out; Enter alone does", values.nanos(each.name()) / 1e9),
              true);
    }
    isStale.put(each.name(), stays != null);
    return stays;
  }

  private Stale madeFromStale(Definition each) {
    return each.reads().stream()
        .filter(read -> isStale.getOrDefault(read, values.stale(read).isPresent()))
        .sorted()
        .findFirst()
        .map(Stale::madeFrom)
        .orElse(null);
  }
}
