package sheathwright.repl.line;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A session that only remembers. */
public final class Standing implements Reader.Around {

  private final Map<String, Object> variables;
  private final Reader reader = new Reader(this);

  Standing() {
    this(Map.of());
  }

  /** One that remembers these already. */
  public Standing(Map<String, Object> variables) {
    this.variables = new HashMap<>(variables);
  }

  /** Reads a line and keeps what it makes, as a session does. */
  Reading read(String line) {
    Reading reading = reader.read(line);
    if (reading instanceof Reading.Direct direct) {
      direct.made().stream()
          .filter(made -> !made.name().isEmpty())
          .forEach(made -> variables.put(made.name(), made.value()));
    }
    return reading;
  }

  /** What a line comes to without a compiler. */
  Reading.Made made(String line) {
    List<Reading.Made> made = ((Reading.Direct) read(line)).made();
    return made.get(made.size() - 1);
  }

  @Override
  public boolean has(String name) {
    return variables.containsKey(name);
  }

  @Override
  public Object value(String name) {
    return variables.get(name);
  }

  @Override
  public boolean isOwn(String name) {
    return false;
  }

  @Override
  public boolean isTyped(String name) {
    return false;
  }

  @Override
  public List<Class<?>> words() {
    return List.of(Holds.class);
  }
}
