package sheathwright.leveling.target;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * The target over 60 sagged rafters of 12 stations, beside the same linear program handed whole to
 * the library that solves it: one solve of the first objective, without its ties and checks.
 */
public final class TargetBenchmark {

  private static final int RAFTERS = 60;
  private static final int STATIONS = 12;
  private static final int PLANES = 100;
  private static final int WARM_UP = 40;

  private TargetBenchmark() {}

  /** Takes nothing. */
  public static void main(String[] arguments) {
    List<List<TargetReading>> planes = new ArrayList<>();
    for (int i = 0; i < PLANES; i++) {
      planes.add(TargetReadings.sagged(new Random(i), RAFTERS, STATIONS));
    }
    for (TargetObjective objective : TargetObjective.values()) {
      compare(planes, objective);
    }
    double[] lines = new double[PLANES];
    for (int i = 0; i < PLANES; i++) {
      long start = cpu();
      TargetLines.over(planes.get(i), TargetObjective.TOTAL, TargetReading.UNLIMITED);
      lines[i] = (cpu() - start) / 1e6;
    }
    say("A line over each rafter, total: median %.1f ms of CPU.", median(lines));
  }

  private static void compare(List<List<TargetReading>> planes, TargetObjective objective) {
    double[] ours = new double[PLANES];
    double[] whole = new double[PLANES];
    double widest = 0;
    for (int i = 0; i < PLANES; i++) {
      long start = cpu();
      TargetPlane plane = TargetPlane.over(planes.get(i), objective, TargetReading.UNLIMITED);
      ours[i] = (cpu() - start) / 1e6;
      start = cpu();
      double value = whole(planes.get(i), objective);
      whole[i] = (cpu() - start) / 1e6;
      boolean isTotal = objective == TargetObjective.TOTAL;
      widest = Math.max(widest, Math.abs(value - (isTotal ? plane.total() : plane.largest())));
    }
    say(
        "Least %s: ours %.1f ms of CPU (at most %.1f), whole program %.1f ms, ratio %.3f, apart by %.1e in at most.",
        objective.word(),
        median(ours),
        Arrays.stream(warm(ours)).max().orElseThrow(),
        median(whole),
        median(ours) / median(whole),
        widest);
  }

  private static double whole(List<TargetReading> readings, TargetObjective objective) {
    TargetFrame frame = new TargetFrame(readings, TargetReading.UNLIMITED);
    TargetProgram program = new TargetProgram(TargetFrame.VARIABLES, frame.reach());
    boolean isTotal = objective == TargetObjective.TOTAL;
    for (int i = 0; i < frame.size(); i++) {
      program.add(frame.least(i));
      if (!isTotal) {
        program.add(frame.largest(i));
      }
    }
    double[] goal = isTotal ? frame.meanHeight() : TargetFrame.only(TargetFrame.EXTRA);
    double[] values = program.least(goal).orElseThrow().values();
    double sum = 0;
    for (int i = 0; i < frame.size(); i++) {
      sum += frame.buildUp(i, values);
    }
    return isTotal ? sum : values[TargetFrame.EXTRA];
  }

  /** Of this thread, in nanoseconds: what neighbors on the machine do not change. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double[] warm(double[] times) {
    return Arrays.copyOfRange(times, WARM_UP, times.length);
  }

  private static double median(double[] times) {
    double[] sorted = warm(times);
    Arrays.sort(sorted);
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }

  private static void say(String text, Object... values) {
    System.out.println(String.format(Locale.ROOT, text, values));
  }
}
