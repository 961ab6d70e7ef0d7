package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import sheathwright.cutting.Patience;

/**
 * Packs pieces by best fit, then improves the packing: a few sheets are emptied and their pieces
 * packed again in another order. A change is kept if it buys fewer sheets, or leaves more to the
 * offcuts, or makes full sheets fuller and empty ones emptier; now and then a slightly worse one is
 * kept too.
 */
final class SheetRepacking {

  /** Any number, so that the same order gives the same plan. */
  private static final long SEED = 7_919;

  /** They take some hundredths of a second at most; plans depend on it only where patience ends. */
  private static final int ROUNDS_BETWEEN_LOOKS = 64;

  // Chance counts as much as the next three: on HalfSheetWork half and double of
  // each save none to two sheets of 415, on FineSheetsWork none or one of 174, with rests now
  // larger
  // and now smaller. Of the first, half takes 0.94 of the turns, double 0.99.
  private static final int MOST_EMPTIED = 4;
  // Half 0.94, double 1.00.
  private static final double MOST_WORSE = 0.02;
  // Half 0.97, double 0.98.
  private static final double MOST_NOISE = 0.5;
  private static final PackedSheet.Split[] SPLITS = PackedSheet.Split.values();

  private final SheetTask task;
  private final double sheetArea;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private List<PackedSheet> current;
  private double currentCost;
  private List<PackedSheet> best;
  private double bestCost;

  private boolean byArea;
  private PackedSheet.Split split = PackedSheet.Split.LARGEST_REST;

  SheetRepacking(SheetTask task) {
    this.task = task;
    SheetTask.Stock sheet = task.stocks().get(SheetTask.NEW);
    sheetArea = (double) sheet.width() * sheet.height();
    int[] all = new int[task.pieces()];
    int at = 0;
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      for (int copy = 0; copy < task.kinds().get(kind).count(); copy++) {
        all[at++] = kind;
      }
    }
    for (PackedSheet.Split rule : SPLITS) {
      for (int order = 0; order < 6; order++) {
        split = rule;
        byArea = order % 2 == 0;
        List<PackedSheet> packed = pack(List.of(), sorted(all, order / 2, 0));
        if (packed != null && (best == null || cost(packed) < bestCost)) {
          best = packed;
          bestCost = cost(packed);
        }
      }
    }
    current = best;
    currentCost = bestCost;
  }

  /** Whether there is a packing; pieces that fit only offcuts may have found none. */
  boolean isPacked() {
    return best != null;
  }

  /** Takes over a packing from elsewhere if it is better. */
  void offer(List<PackedSheet> packed) {
    double cost = cost(packed);
    if (cost < bestCost) {
      best = packed;
      bestCost = cost;
    }
  }

  /** The best packing so far. */
  List<PackedSheet> best() {
    return best;
  }

  /** New sheets of the best packing so far. */
  int newSheets() {
    return newSheets(best);
  }

  private static int newSheets(List<PackedSheet> packed) {
    return (int) packed.stream().filter(sheet -> sheet.stock() == SheetTask.NEW).count();
  }

  private double cost(List<PackedSheet> packed) {
    double cost = 0;
    for (PackedSheet sheet : packed) {
      double filled = sheet.filled() / sheetArea;
      if (sheet.stock() == SheetTask.NEW) {
        cost += 1_000_000 + 10 * filled - filled * filled;
      }
    }
    return cost;
  }

  /**
   * Improves the packing.
   *
   * @param enough stops when no more new sheets than this are bought
   */
  void improve(int rounds, int enough, Patience patience) {
    for (int round = 0; round < rounds && newSheets() > enough; round++) {
      if (round % ROUNDS_BETWEEN_LOOKS == ROUNDS_BETWEEN_LOOKS - 1 && patience.isSpent()) {
        return;
      }
      List<PackedSheet> changed = change();
      if (changed == null) {
        continue;
      }
      double cost = cost(changed);
      double leave = MOST_WORSE * (rounds - round) / rounds * random.nextDouble();
      if (cost <= currentCost + leave) {
        current = changed;
        currentCost = cost;
        if (cost < bestCost) {
          best = changed;
          bestCost = cost;
        }
      }
    }
  }

  /** Makes full sheets fuller and the emptiest emptier without buying more. */
  void polish(int rounds, Patience patience) {
    current = best;
    currentCost = bestCost;
    improve(rounds, -1, patience);
  }

  private List<PackedSheet> change() {
    int emptied = Math.min(current.size(), 1 + random.nextInt(MOST_EMPTIED));
    boolean[] isEmptied = new boolean[current.size()];
    int pieces = 0;
    for (int at = 0; at < emptied; at++) {
      int one = random.nextInt(current.size());
      int other = random.nextInt(current.size());
      int chosen = current.get(one).filled() <= current.get(other).filled() ? one : other;
      if (!isEmptied[chosen]) {
        isEmptied[chosen] = true;
        pieces += current.get(chosen).pieces();
      }
    }
    List<PackedSheet> kept = new ArrayList<>();
    int[] loose = new int[pieces];
    int next = 0;
    for (int at = 0; at < current.size(); at++) {
      PackedSheet sheet = current.get(at);
      if (isEmptied[at]) {
        for (int piece = 0; piece < sheet.pieces(); piece++) {
          loose[next++] = sheet.kind(piece);
        }
      } else {
        kept.add(sheet);
      }
    }
    split = SPLITS[random.nextInt(SPLITS.length)];
    byArea = random.nextBoolean();
    return pack(kept, sorted(loose, random.nextInt(3), MOST_NOISE * random.nextDouble()));
  }

  /** By area, width or height, the largest first, each up to {@code noise} larger than it is. */
  private int[] sorted(int[] loose, int order, double noise) {
    record Keyed(int kind, boolean onlyOffcuts, double key) {}
    return Arrays.stream(loose)
        .mapToObj(
            kind -> {
              SheetTask.Kind size = task.kinds().get(kind);
              double key =
                  order == 0
                      ? (double) size.width() * size.height()
                      : order == 1
                          ? size.width() + 1e-6 * size.height()
                          : size.height() + 1e-6 * size.width();
              boolean onlyOffcuts = !task.stocks().get(SheetTask.NEW).holds(size);
              return new Keyed(kind, onlyOffcuts, key * (1 + noise * random.nextDouble()));
            })
        .sorted(Comparator.comparing(Keyed::onlyOffcuts).thenComparingDouble(Keyed::key).reversed())
        .mapToInt(Keyed::kind)
        .toArray();
  }

  /**
   * The kept sheets with the loose pieces in their gaps and on more sheets; null if some fit none.
   */
  private List<PackedSheet> pack(List<PackedSheet> kept, int[] loose) {
    List<PackedSheet> packed = new ArrayList<>(kept);
    int[] supply = task.supply();
    for (PackedSheet sheet : kept) {
      supply[sheet.stock()]--;
    }
    int before = kept.size();
    for (int kind : loose) {
      SheetTask.Kind size = task.kinds().get(kind);
      int bestAt = -1;
      double least = Double.POSITIVE_INFINITY;
      for (int at = 0; at < packed.size(); at++) {
        double misfit = packed.get(at).misfit(size, byArea);
        if (misfit < least) {
          least = misfit;
          bestAt = at;
        }
      }
      if (bestAt < 0) {
        int stock = smallestOffcut(size, supply);
        if (!task.stocks().get(stock).holds(size)) {
          return null;
        }
        supply[stock]--;
        bestAt = packed.size();
        packed.add(new PackedSheet(stock, task.stocks().get(stock)));
      } else if (bestAt < before && packed.get(bestAt) == kept.get(bestAt)) {
        packed.set(bestAt, new PackedSheet(packed.get(bestAt)));
      }
      packed.get(bestAt).add(kind, size, byArea, split);
    }
    return packed;
  }

  private int smallestOffcut(SheetTask.Kind size, int[] supply) {
    int smallest = SheetTask.NEW;
    double least = Double.POSITIVE_INFINITY;
    for (int stock = 1; stock < supply.length; stock++) {
      SheetTask.Stock offcut = task.stocks().get(stock);
      double area = (double) offcut.width() * offcut.height();
      if (supply[stock] > 0 && offcut.holds(size) && area < least) {
        least = area;
        smallest = stock;
      }
    }
    return smallest;
  }
}
