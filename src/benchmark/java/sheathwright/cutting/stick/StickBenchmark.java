package sheathwright.cutting.stick;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import sheathwright.cutting.Stopwatch;
import sheathwright.cutting.TestPatience;

/**
 * Our search beside a general solver, in one run on one machine: the lists made for this project,
 * then the published sets, which only our search is tried on.
 */
public final class StickBenchmark {

  private static final double SECONDS = 5;
  private static final int EVERY = 6;
  private static final List<String> SETS =
      List.of(
          "falkenauer_u120",
          "falkenauer_t60",
          "falkenauer_t120",
          "scholl1",
          "scholl2",
          "schwerin1",
          "schwerin2",
          "waescher_gau1",
          "waescher_gau2",
          "hard28");

  private StickBenchmark() {}

  /**
   * Takes the folder with the published sets; the lists of our own come from the tests. With the
   * word "alone" behind it, only ours runs, by processor time. In place of the folder, "ours"
   * stands for our own lists only, and "short" for a few of them.
   */
  public static void main(String[] arguments) {
    Path folder = Path.of(arguments[0]);
    List<StickList> lists = StickList.priced(StickList.OURS);
    if (List.of(arguments).contains("alone")) {
      alone("warm-up", lists.subList(0, 6));
      alone("ours", lists);
      SETS.forEach(set -> alone(set, StickList.published(folder, set)));
      return;
    }
    warmUp(lists.get(0));
    boolean isShort = arguments[0].equals("short");
    compare(
        isShort ? lists.stream().filter(list -> lists.indexOf(list) % EVERY == 0).toList() : lists);
    if (isShort || arguments[0].equals("ours")) {
      return;
    }
    for (String set : SETS) {
      published(set, StickList.published(folder, set));
    }
  }

  /** One small list, so that neither side pays for loading and compiling. */
  private static void warmUp(StickList list) {
    StickCutting.plan(list.order(), TestPatience.seconds(SECONDS));
    StickArcFlow.solve(list.order(), SECONDS);
    say("Both were warmed up with the list %s.", list);
  }

  private static void alone(String set, List<StickList> lists) {
    List<Double> seconds = new ArrayList<>();
    int proven = 0;
    long cost = 0;
    long atLeast = 0;
    for (StickList list : lists) {
      Stopwatch watch = new Stopwatch();
      StickPlan plan = StickCutting.plan(list.order(), Stopwatch.patience(SECONDS));
      seconds.add(watch.seconds());
      proven += plan.isProven() ? 1 : 0;
      cost += plan.cost();
      atLeast += plan.atLeast();
    }
    say("%s", Stopwatch.summary(set, proven, cost, atLeast, seconds));
  }

  private static void compare(List<StickList> lists) {
    say(
        "%-22s%7s%9s%9s%7s%9s%11s%7s%9s",
        "list", "pieces", "cost", "bound", "proven", "seconds", "SCIP cost", "proven", "seconds");
    List<Double> ours = new ArrayList<>();
    List<Double> theirs = new ArrayList<>();
    int proven = 0;
    int theirProven = 0;
    double widest = 0;
    for (StickList list : lists) {
      Stopwatch watch = new Stopwatch();
      StickPlan plan = StickCutting.plan(list.order(), TestPatience.seconds(SECONDS));
      ours.add(watch.seconds());
      watch = new Stopwatch();
      StickArcFlow.Found found = StickArcFlow.solve(list.order(), SECONDS);
      theirs.add(watch.seconds());
      proven += plan.isProven() ? 1 : 0;
      theirProven += found.isProven() ? 1 : 0;
      widest = Math.max(widest, (double) plan.cost() / plan.atLeast() - 1);
      say(
          "%-22s%7d%9d%9d%7b%9.3f%11d%7b%9.3f",
          list,
          list.pieces(),
          plan.cost(),
          plan.atLeast(),
          plan.isProven(),
          ours.get(ours.size() - 1),
          found.cost(),
          found.isProven(),
          theirs.get(theirs.size() - 1));
      if (found.isProven() && (found.cost() < plan.atLeast() || found.cost() > plan.cost())) {
        say("  DISAGREE: %s", list);
      }
    }
    say("");
    say(
        "Ours: %d of %d proven within %.0f s (wanted: 19 in 20), median %.3f s (wanted: 0.3), widest"
            + " gap %.4f %% (wanted: 0.1).",
        proven, lists.size(), SECONDS, median(ours), 100 * widest);
    say("SCIP on arc flow: %d proven, median %.3f s.", theirProven, median(theirs));
    say("Ratio of the medians: %.0f.", median(theirs) / median(ours));
    say("");
  }

  private static void published(String set, List<StickList> lists) {
    List<Double> seconds = new ArrayList<>();
    int known = 0;
    int provenOfKnown = 0;
    int provenOfOpen = 0;
    for (StickList list : lists) {
      long start = System.nanoTime();
      StickPlan plan = StickCutting.plan(list.order(), TestPatience.seconds(SECONDS));
      seconds.add((System.nanoTime() - start) / 1e9);
      boolean isKnown = list.lower() == list.best();
      known += isKnown ? 1 : 0;
      provenOfKnown += isKnown && plan.isProven() ? 1 : 0;
      provenOfOpen += !isKnown && plan.isProven() ? 1 : 0;
      if (plan.atLeast() > list.best() || plan.cost() < list.lower()) {
        say("  WRONG: %s cost %d bound %d", list, plan.cost(), plan.atLeast());
      }
      if (!plan.isProven() || !isKnown) {
        say(
            "  %-16s cost %d, bound %d, known %d to %d, %.3f s",
            list,
            plan.cost(),
            plan.atLeast(),
            list.lower(),
            list.best(),
            seconds.get(seconds.size() - 1));
      }
    }
    say(
        "%-16s %d of %d proven, %d of %d open ones, median %.3f s",
        set, provenOfKnown, known, provenOfOpen, lists.size() - known, median(seconds));
  }

  private static double median(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }

  private static void say(String text, Object... values) {
    System.out.println(String.format(Locale.ROOT, text, values));
  }
}
