package sheathwright.cutting;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Seconds of this thread's processor time, so that a change can be measured beside other work. The
 * first line of a summary can be laid beside the same line of another day.
 */
public final class Stopwatch {

  private final long start = now();

  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Seconds since it was made. */
  public double seconds() {
    return (now() - start) / 1e9;
  }

  /** Patience that lasts for so many seconds of processor time from now on. */
  public static Patience patience(double seconds) {
    Stopwatch watch = new Stopwatch();
    return () -> seconds - watch.seconds();
  }

  /** What one set of lists came to, in one line. */
  public static String summary(
      String set, int proven, long cost, long atLeast, List<Double> seconds) {
    double[] sorted = seconds.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return String.format(
        Locale.ROOT,
        "%-16s%5d lists%5d proven, sums: cost %d, bound %d, CPU median %.4f s, total %.2f s",
        set,
        sorted.length,
        proven,
        cost,
        atLeast,
        (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2,
        Arrays.stream(sorted).sum());
  }
}
