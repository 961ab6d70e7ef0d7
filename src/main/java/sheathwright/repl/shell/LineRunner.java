package sheathwright.repl.shell;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import sheathwright.repl.shell.LineThread.LineGroup;

/**
 * Runs the lines of a session one after the other, each in a thread of its own that can be stopped.
 */
public final class LineRunner implements AutoCloseable {

  private final LineGroup group = new LineGroup();
  private volatile LineThread running;
  private volatile boolean isStopped;
  private volatile long began;
  private volatile long nanos;

  /** Raised where a line is waited for that was stopped. */
  public static final class StoppedLine extends RuntimeException {

    private static final long serialVersionUID = 1;

    StoppedLine() {
      super("stopped", null, false, false);
    }
  }

  /**
   * Runs a line to its end.
   *
   * @return what it made
   * @throws StoppedLine if it was stopped before
   * @throws Throwable what the line raised
   */
  @SuppressWarnings("unchecked") // the thread keeps what its own work made
  public <T> T made(Callable<T> line) throws Throwable {
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
      throw new StoppedLine();
    }
    if (thread.thrown() != null) {
      throw thread.thrown();
    }
    return (T) thread.made();
  }

  /**
   * Runs what raises nothing that is checked.
   *
   * @return what it made
   * @throws StoppedLine if it was stopped before
   */
  public <T> T plainly(Supplier<T> line) {
    try {
      return made(line::get);
    } catch (RuntimeException | Error raised) {
      throw raised;
    } catch (Throwable impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /**
   * Stops the line that is running, each that follows until {@link #goOn}, and every thread that
   * lines have started.
   */
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
  }
}
