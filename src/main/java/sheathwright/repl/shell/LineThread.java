package sheathwright.repl.shell;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * The thread that one line runs in. It can be stopped: the line's own code asks at every turn of a
 * loop whether it is; what does not ask is left alone after a moment, and can change nothing more.
 */
public final class LineThread extends Thread {

  /** A person who has pressed the key waits no longer without pressing it again. */
  private static final long MILLIS_TO_STOP = 1500;

  /** What is done ends at once; this is for a busy machine. */
  private static final long MILLIS_TO_END = 100;

  private final Callable<?> line;
  private final CountDownLatch done = new CountDownLatch(1);
  private volatile boolean isStopped;
  private Object made;
  private Throwable thrown;

  /** Raised in a line that was stopped. */
  static final class LineStopped extends Error {

    private static final long serialVersionUID = 1;

    LineStopped() {
      super("stopped", null, false, false);
    }
  }

  LineThread(ThreadGroup group, Callable<?> line) {
    super(group, "a line that was stopped");
    this.line = line;
    setDaemon(true);
  }

  /** Ends the calling line if it was stopped; every loop and method of a line asks this. */
  public static void check() {
    Thread current = Thread.currentThread();
    boolean isToEnd =
        current instanceof LineThread own
            ? own.isStopped
            : isOfALine(current) && current.isInterrupted();
    if (isToEnd) {
      throw new LineStopped();
    }
  }

  private static boolean isOfALine(Thread thread) {
    return thread.getThreadGroup() instanceof LineGroup;
  }

  @Override
  public void run() {
    try {
      made = line.call();
    } catch (Throwable raised) { // whatever it is, it is told where the line is waited for
      thrown = raised;
    } finally {
      done.countDown();
    }
  }

  /** Waits until the line has run, or was stopped. */
  void await() throws InterruptedException {
    long patience = 0;
    while (!done.await(50, TimeUnit.MILLISECONDS)) {
      patience += isStopped ? 50 : 0;
      if (patience > MILLIS_TO_STOP) {
        return;
      }
    }
    join(MILLIS_TO_END);
  }

  void end() {
    isStopped = true;
    interrupt();
  }

  boolean isStopped() {
    return isStopped;
  }

  /** What the line made, or null. */
  Object made() {
    return made;
  }

  /** What the line raised, or null. */
  Throwable thrown() {
    return thrown;
  }

  /** The threads of a session's lines, and those that they started. */
  static final class LineGroup extends ThreadGroup {

    LineGroup() {
      super("lines and what they started");
    }

    /** The names of those that are still running. */
    List<String> running() {
      Thread[] running = new Thread[activeCount() + 1];
      enumerate(running);
      return Arrays.stream(running)
          .filter(Objects::nonNull)
          .filter(Thread::isAlive)
          .filter(thread -> !(thread instanceof LineThread line) || line.isStopped)
          .map(Thread::getName)
          .toList();
    }

    /** A thread that a line started has no one to tell but the user. */
    @Override
    public void uncaughtException(Thread thread, Throwable raised) {
      if (!(raised instanceof LineStopped || raised instanceof Exits.LineEnded)) {
        System.err.println(thread.getName() + ": " + raised);
      }
    }
  }
}
