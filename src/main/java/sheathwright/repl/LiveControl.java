package sheathwright.repl;

import java.lang.reflect.Field;
import java.util.HashMap;
import java.util.Map;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * Runs snippets in this process and keeps hold of the objects that variables hold, not only of
 * their text.
 */
final class LiveControl extends LocalExecutionControl {

  private final Map<String, Object> live = new HashMap<>();

  @Override
  public String varValue(String className, String name)
      throws RunException, EngineTerminationException, InternalException {
    try {
      Field field = findClass(className).getDeclaredField(name);
      field.setAccessible(true);
      Object value = field.get(null);
      live.put(name, value);
      return String.valueOf(value);
    } catch (ReflectiveOperationException gone) {
      throw new InternalException(gone.toString());
    }
  }

  /** The object that a variable held when its value was last asked for. */
  Object last(String name) {
    return live.get(name);
  }

  /** Provides this one control. */
  ExecutionControlProvider provider() {
    return new ExecutionControlProvider() {
      @Override
      public String name() {
        return "live";
      }

      @Override
      public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
        return LiveControl.this;
      }
    };
  }
}
