package sheathwright.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Years from seeds. {@code -Dyears=10000} plays so many, {@code -Dfirst=123} from that seed on. */
class YearTest {

  private static final int YEARS = Integer.getInteger("years", 20);
  private static final long FIRST = Long.getLong("first", 1);
  private static final int MOST_TOLD = 10;

  private static String short_(String message) {
    return message.substring(0, Math.min(900, (message + "---").indexOf("---")));
  }

  @Test
  void everyYearHolds() {
    List<String> broken = new ArrayList<>();
    Map<Mishap, Integer> befallen = new EnumMap<>(Mishap.class);
    int steps = 0;
    var cpu = java.lang.management.ManagementFactory.getThreadMXBean();
    long began = cpu.getCurrentThreadCpuTime();
    for (long seed = FIRST; seed < FIRST + YEARS && broken.size() < MOST_TOLD; seed++) {
      try {
        Year year = new Year(seed, Spoil.NOTHING).played();
        steps += year.steps();
        year.befallen().forEach((mishap, count) -> befallen.merge(mishap, count, Integer::sum));
      } catch (AssertionError fault) {
        broken.add(YEARS == 1 ? fault.getMessage() : short_(fault.getMessage()));
      }
    }
    System.out.printf(
        "%d steps in %d ms CPU %s%n",
        steps, (cpu.getCurrentThreadCpuTime() - began) / 1_000_000, befallen);
    assertThat(broken).isEmpty();
  }
}
