package sheathwright.repl.shell;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import sheathwright.repl.shell.LineThread.LineGroup;

/**
 * Runs snippets in this process, each in a thread of its own that can be stopped, and keeps hold of
 * the objects that variables hold, not only of their text.
 */
public final class LiveControl extends DirectExecutionControl {

  private final Map<String, Field> fields = new HashMap<>();
  private final LineGroup group = new LineGroup();
  private volatile LineThread running;
  private volatile boolean isStopped;
  private volatile long began;
  private volatile long nanos;

  /** A control whose snippets reach this session. */
  public LiveControl(Lines lines) {
    super(new SnippetLoader(lines));
  }

  @Override
  protected String invoke(Method line) throws Exception {
    LineThread thread = new LineThread(group, line);
    running = thread;
    if (isStopped) {
      thread.end();
    }
    began = System.nanoTime();
    thread.start();
    thread.await();
    nanos = System.nanoTime() - began;
    running = null;
    if (thread.isStopped()) {
      throw new StoppedException();
    }
    if (thread.thrown() != null) {
      throw new InvocationTargetException(thread.thrown());
    }
    return ""; // nobody reads a value's text: whoever wants a value takes the value itself
  }

  /**
   * Stops the line that is running, each that follows until {@link #goOn}, and every thread that
   * lines have started.
   */
  @Override
  public void stop() {
    isStopped = true;
    LineThread thread = running;
    if (thread != null) {
      thread.end();
    }
    group.interrupt();
  }

  /** Lines run again after one was stopped. */
  public void goOn() {
    isStopped = false;
  }

  /** Whether a line was stopped since {@link #goOn}. */
  public boolean isStopped() {
    return isStopped;
  }

  /** When the line that runs began, by the clock of {@link System#nanoTime}. */
  public long began() {
    return began;
  }

  /** How long the last line ran. */
  public long nanos() {
    return nanos;
  }

  /** The names of the threads that lines have started and that still run. */
  public List<String> threadsLeft() {
    return group.running();
  }

  @Override
  public void close() {
    group.interrupt();
    super.close();
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
