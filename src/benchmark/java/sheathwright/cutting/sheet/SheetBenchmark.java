package sheathwright.cutting.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sheathwright.cutting.Stopwatch;
import sheathwright.cutting.TestPatience;

/**
 * Our search beside a general solver, in one run on one machine: the lists made for this project,
 * then the published sets, which only our search is tried on.
 */
public final class SheetBenchmark {

  private static final int FEW_PIECES = 60;
  private static final List<String> SETS = List.of("beng", "cgcut", "class", "gcut", "ngcut");

  private SheetBenchmark() {}

  /**
   * Takes the folder with the published sets; the lists of our own come from the tests. With the
   * word "alone" behind it, only ours runs, by processor time. In place of the folder, "ours"
   * stands for our own lists only, and "short" for a few of them.
   */
  public static void main(String[] arguments) throws IOException {
    Map<String, SheetOrder> ours = SheetInstances.orders(SheetInstances.resource("domain_2d.txt"));
    Map<String, Map<String, String>> optima =
        SheetInstances.table(SheetInstances.resource("optima_domain_2d.csv"), "instance");
    Path folder = Path.of(arguments[0]);
    if (List.of(arguments).contains("alone")) {
      alone("warm-up", ours.values().stream().filter(o -> pieces(o) <= FEW_PIECES).toList());
      alone("ours", List.copyOf(ours.values()));
      for (String set : SETS) {
        List<String> lines = SheetInstances.file(folder.resolve("2d_" + set + ".txt"));
        alone(set, List.copyOf(SheetInstances.orders(lines).values()));
      }
      return;
    }
    warmUp(ours);
    boolean isShort = arguments[0].equals("short");
    compare(isShort ? few(ours) : ours, optima);
    if (isShort || arguments[0].equals("ours")) {
      return;
    }
    Map<String, Map<String, String>> published =
        SheetInstances.table(SheetInstances.file(folder.resolve("optima_2d.csv")), "instance");
    for (String set : SETS) {
      published(
          set,
          SheetInstances.orders(SheetInstances.file(folder.resolve("2d_" + set + ".txt"))),
          published);
    }
  }

  private static Map<String, SheetOrder> few(Map<String, SheetOrder> lists) {
    Map<String, SheetOrder> few = new LinkedHashMap<>(lists);
    few.values().removeIf(order -> pieces(order) > FEW_PIECES);
    return few;
  }

  private static int pieces(SheetOrder order) {
    return order.pieces().stream().mapToInt(SheetPiece::count).sum();
  }

  private static double patience(SheetOrder order) {
    return pieces(order) <= FEW_PIECES ? 2 : 5;
  }

  /** The short lists, so that neither side pays for loading and compiling. */
  private static void warmUp(Map<String, SheetOrder> lists) {
    lists.forEach(
        (name, order) -> {
          if (pieces(order) <= FEW_PIECES) {
            SheetCutting.plan(order, TestPatience.seconds(2));
            SheetLevels.solve(order, 0.5);
          }
        });
    say("Both were warmed up with the lists of up to %d pieces.", FEW_PIECES);
  }

  private static void alone(String set, List<SheetOrder> orders) {
    List<Double> seconds = new ArrayList<>();
    int proven = 0;
    long sheets = 0;
    long atLeast = 0;
    for (SheetOrder order : orders) {
      Stopwatch watch = new Stopwatch();
      SheetPlan plan = SheetCutting.plan(order, Stopwatch.patience(patience(order)));
      seconds.add(watch.seconds());
      proven += plan.isProven() ? 1 : 0;
      sheets += plan.newSheets();
      atLeast += plan.atLeast();
    }
    say("%s", Stopwatch.summary(set, proven, sheets, atLeast, seconds));
  }

  private static void compare(
      Map<String, SheetOrder> lists, Map<String, Map<String, String>> optima) {
    say(
        "%-16s%7s%8s%7s%8s%9s%9s%7s%8s%9s",
        "list", "pieces", "sheets", "bound", "proven", "seconds", "trials", "SCIP", "proven",
        "seconds");
    List<Double> ourSeconds = new ArrayList<>();
    List<Double> theirSeconds = new ArrayList<>();
    int proven = 0;
    int theirProven = 0;
    int fewer = 0;
    int widest = 0;
    for (Map.Entry<String, SheetOrder> list : lists.entrySet()) {
      SheetOrder order = list.getValue();
      double patience = patience(order);
      Stopwatch watch = new Stopwatch();
      SheetPlan plan = SheetCutting.plan(order, TestPatience.seconds(patience));
      ourSeconds.add(watch.seconds());
      watch = new Stopwatch();
      SheetLevels.Found found = SheetLevels.solve(order, patience);
      theirSeconds.add(watch.seconds());
      proven += plan.isProven() ? 1 : 0;
      theirProven += found.isProven() ? 1 : 0;
      fewer += found.sheets() < 0 || plan.newSheets() < found.sheets() ? 1 : 0;
      widest = Math.max(widest, plan.newSheets() - plan.atLeast());
      say(
          "%-16s%7d%8d%7d%8b%9.3f%9s%7d%8b%9.3f",
          list.getKey(),
          pieces(order),
          plan.newSheets(),
          plan.atLeast(),
          plan.isProven(),
          ourSeconds.get(ourSeconds.size() - 1),
          optima.get(list.getKey()).get("best_guillotine"),
          found.sheets(),
          found.isProven(),
          theirSeconds.get(theirSeconds.size() - 1));
      if (found.sheets() >= 0 && found.sheets() < plan.atLeast()) {
        say("  DISAGREE: %s", list.getKey());
      }
    }
    say("");
    say(
        "Ours: %d of %d proven (wanted: 9 in 10), at most %d above the bound (wanted: 1), median"
            + " %.3f s; 2 s for up to %d pieces, else 5 s.",
        proven, lists.size(), widest, median(ourSeconds), FEW_PIECES);
    say(
        "SCIP on two-stage columns: %d proven for two stages, median %.3f s; ours is fewer sheets on"
            + " %d lists.",
        theirProven, median(theirSeconds), fewer);
    say("Ratio of the medians: %.0f.", median(theirSeconds) / median(ourSeconds));
    say("");
  }

  private static void published(
      String set, Map<String, SheetOrder> lists, Map<String, Map<String, String>> optima) {
    List<Double> seconds = new ArrayList<>();
    int proven = 0;
    int fewer = 0;
    for (Map.Entry<String, SheetOrder> list : lists.entrySet()) {
      long start = System.nanoTime();
      SheetPlan plan = SheetCutting.plan(list.getValue(), TestPatience.seconds(2));
      seconds.add((System.nanoTime() - start) / 1e9);
      Map<String, String> row = optima.get(list.getKey());
      int twoStage =
          Math.min(
              Integer.parseInt(row.get("two_stage_h_best")),
              Integer.parseInt(row.get("two_stage_v_best")));
      proven += plan.isProven() ? 1 : 0;
      fewer += plan.newSheets() < twoStage ? 1 : 0;
      boolean isWrong =
          plan.newSheets() < Integer.parseInt(row.get("guillotine_lower_bound"))
              || plan.atLeast() > Integer.parseInt(row.get("guillotine_best"));
      if (isWrong || plan.newSheets() > twoStage) {
        say(
            "  %s: %s %d sheets, bound %d, two stages %d",
            isWrong ? "WRONG" : "WORSE", list.getKey(), plan.newSheets(), plan.atLeast(), twoStage);
      }
    }
    say(
        "%-8s %d of %d proven, fewer sheets than the exact two-stage model on %d, median %.3f s",
        set, proven, lists.size(), fewer, median(seconds));
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
