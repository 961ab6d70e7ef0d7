package sheathwright.leveling.string;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import sheathwright.figure.Amounts;
import sheathwright.leveling.plan.Straightening;
import sheathwright.leveling.target.TargetLines;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetReading;
import sheathwright.leveling.target.TargetReadings;
import sheathwright.wood.LumberSize;

/**
 * From the readings of 60 sagged rafters of 12 stations to what is done to each: the readings held
 * against their neighbors, and the whole plan, beside the line over each rafter alone.
 */
public final class PlanBenchmark {

  private static final int RAFTERS = 60;
  private static final int STATIONS = 12;
  private static final int PLANES = 60;
  private static final int WARM_UP = 30;

  private PlanBenchmark() {}

  /** Takes nothing. */
  public static void main(String[] arguments) {
    double[] judging = new double[PLANES];
    double[] planning = new double[PLANES];
    double[] lines = new double[PLANES];
    for (int i = 0; i < PLANES; i++) {
      List<TargetReading> plane = TargetReadings.sagged(new Random(i), RAFTERS, STATIONS);
      List<StringReading> read = read(plane);
      long start = cpu();
      StringReadings readings = StringReadings.of("A", read, SuspicionRules.usual());
      judging[i] = (cpu() - start) / 1e6;
      start = cpu();
      Straightening.straighten(
          readings, LumberSize.SIZE_2X8, LumberSize.SIZE_2X8, Amounts.number(0.8));
      planning[i] = (cpu() - start) / 1e6;
      start = cpu();
      TargetLines.over(plane, TargetObjective.TOTAL, TargetReading.UNLIMITED);
      lines[i] = (cpu() - start) / 1e6;
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "Readings judged %.1f ms of CPU, plan %.1f ms, of that the lines alone %.1f ms.",
            median(judging),
            median(planning),
            median(lines)));
  }

  private static List<StringReading> read(List<TargetReading> plane) {
    List<StringReading> read = new ArrayList<>();
    for (TargetReading reading : plane) {
      read.add(
          StringReading.ofDrop(
              "at " + reading.x(),
              Amounts.in(reading.x()),
              Amounts.in(reading.y()),
              Amounts.in(-reading.z())));
    }
    return read;
  }

  /** Of this thread, in nanoseconds: what neighbors on the machine do not change. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double median(double[] times) {
    double[] sorted = Arrays.copyOfRange(times, WARM_UP, times.length);
    Arrays.sort(sorted);
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }
}
