package sheathwright.repl.shell;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.Map;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * Runs snippets in this process, each in a thread of its own that can be stopped, and keeps hold of
 * the objects that variables hold, not only of their text.
 */
public final class LiveControl extends DirectExecutionControl {

  private final Map<String, Field> fields = new HashMap<>();
  private final LineRunner runner;

  /** A control whose snippets reach this session, each run by this runner. */
  public LiveControl(Lines lines, LineRunner runner) {
    super(new SnippetLoader(lines));
    this.runner = runner;
  }

  @Override
  protected String invoke(Method line) throws Exception {
    try {
      return runner.made(() -> invoked(line));
    } catch (LineRunner.StoppedLine stopped) {
      throw new StoppedException();
    } catch (Exception raised) {
      throw raised;
    } catch (Throwable raised) {
      throw new InvocationTargetException(raised);
    }
  }

  private static String invoked(Method line) throws ReflectiveOperationException {
    line.invoke(null);
    return ""; // nobody reads a value's text: whoever wants a value takes the value itself
  }

  /** Stops the line that is running. */
  @Override
  public void stop() {
    runner.stop();
  }

  @Override
  public String varValue(String className, String name) throws InternalException {
    try {
      Field field = findClass(className).getDeclaredField(name);
      field.setAccessible(true);
      fields.put(name, field);
      return "";
    } catch (ReflectiveOperationException gone) {
      throw new InternalException(gone.toString());
    }
  }

  /** The object that the variable holds whose value was last asked for under this name. */
  public Object valueOf(String name) {
    try {
      return fields.get(name).get(null);
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Provides this one control. */
  public ExecutionControlProvider provider() {
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
