package sheathwright.year;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.EnumMap;
import java.util.Map;

/** How far many years have come; said on standard output as they are played. */
final class Tally {

  private static final int YEARS_A_LINE = 100;
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private final long first;
  private final long last;
  private final Map<Mishap, Integer> befallen = new EnumMap<>(Mishap.class);
  private final long began = CLOCK.getCurrentThreadCpuTime();
  private long years;
  private long steps;
  private long stepsOfTheFirst;
  private long nanosOfTheFirst;

  Tally(long first, long years) {
    this.first = first;
    this.last = first + years - 1;
  }

  /** Counts one that was played, and says how far they are after every hundred and the last. */
  void count(Year year, Map<Long, String> broken) {
    years++;
    steps += year.steps();
    year.befallen().forEach((mishap, count) -> befallen.merge(mishap, count, Integer::sum));
    if (years == YEARS_A_LINE) {
      stepsOfTheFirst = steps;
      nanosOfTheFirst = nanos();
    }
    if (years % YEARS_A_LINE == 0 || first + years - 1 == last) {
      System.out.printf(
          "years %s to %s of %s: %s steps, %s, %s as fast as the first %s; broken: %s%n",
          first,
          first + years - 1,
          last,
          steps,
          befallen,
          Math.round(100 * pace()) / 100.0,
          YEARS_A_LINE,
          broken.keySet());
    }
  }

  /** Steps in a second of the processor, against those of the first years. */
  private double pace() {
    return nanosOfTheFirst == 0
        ? 1
        : (double) steps / nanos() / ((double) stepsOfTheFirst / nanosOfTheFirst);
  }

  private long nanos() {
    return CLOCK.getCurrentThreadCpuTime() - began;
  }
}
