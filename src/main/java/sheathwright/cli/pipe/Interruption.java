package sheathwright.cli.pipe;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import sheathwright.cutting.Patience;
import sheathwright.figure.Shown;

/**
 * Ctrl-C during a search: patience runs out at once, the search hands over the best plan that it
 * has, and the program ends only when that has been said. Without a search Ctrl-C is what it always
 * is.
 */
public final class Interruption implements AutoCloseable {

  private static final double NANOSECONDS = 1e9;

  /**
   * A search asks its patience a thousand times a second; whoever presses Ctrl-C waits no longer.
   */
  private static final int SECONDS_TO_END = 10;

  private static final double SECONDS_BETWEEN_LOOKS = 0.5;

  private final Watch watch;
  private final CountDownLatch said = new CountDownLatch(1);
  private final Thread listener = new Thread(this::interrupt, "ctrl-c");
  private volatile boolean isInterrupted;
  private volatile boolean isListening;

  /** Listens from when a search asks for patience. */
  public Interruption(Watch watch) {
    this.watch = watch;
  }

  /** Patience for so many seconds from now, or until Ctrl-C. */
  public Patience lasting(double seconds) {
    if (!isListening) {
      Runtime.getRuntime().addShutdownHook(listener);
      isListening = true;
    }
    long start = System.nanoTime();
    double[] shown = {0};
    return () -> {
      double gone = (System.nanoTime() - start) / NANOSECONDS;
      if (gone - shown[0] > SECONDS_BETWEEN_LOOKS) {
        shown[0] = gone;
        watch.show(Shown.text("%.0f of %.0f seconds; Ctrl-C takes the best so far", gone, seconds));
      }
      return isInterrupted ? 0 : seconds - gone;
    };
  }

  /** Whether somebody pressed Ctrl-C. */
  public boolean hasCome() {
    return isInterrupted;
  }

  /** Listens no more: everything has been said. */
  @Override
  public void close() {
    said.countDown();
    if (isListening && !isInterrupted) {
      try {
        Runtime.getRuntime().removeShutdownHook(listener);
      } catch (IllegalStateException ending) {
        isInterrupted = true; // it came just now: the program ends by itself
      }
    }
  }

  /** Runs when the program is told to end, which waits for this. */
  private void interrupt() {
    isInterrupted = true;
    try {
      said.await(SECONDS_TO_END, TimeUnit.SECONDS);
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
  }
}
