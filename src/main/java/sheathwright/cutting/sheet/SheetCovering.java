package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sheathwright.cutting.Patience;
import sheathwright.cutting.sheet.PatternSearch.Outcome;

/**
 * Looks for a plan with so many new sheets, or shows that there is none. All patterns that such a
 * plan can use are listed and searched; a list is not made again for a waste that adds no pattern
 * to it. Where there are too many, those that waste least are listed, some are taken as the linear
 * program would take them, and the rest is a smaller task of the same sort; that can find a plan,
 * but never show that there is none.
 */
final class SheetCovering {

  /** Any number, so that the same order gives the same plan. */
  private static final long SEED = 104_729;

  /**
   * Tasks of few pieces are listed to the end if at all possible, since that can prove something.
   * SheetWork: half one sheet more, 26 proven in place of 27; double the same plans and bounds,
   * 1.004 of the turns.
   */
  private static final int FEW_PIECES = 60;

  // SheetWork: half and double the same plans and bounds, 0.999 and 1.000 of the turns.
  private static final int MOST_BLOCKS = 250_000;
  // LargeSheetWork: half and double the same plans and bounds, 0.999 and 1.003 of the turns.
  private static final int MOST_BLOCKS_OF_MANY = 80_000;
  // SheetWork: half and double the same plans and bounds, 0.997 and 1.014 of the turns.
  private static final int MOST_NODES = 1_500;

  /**
   * The waste that a pattern may have grows from this part of all waste. SheetWork: half and double
   * the same plans and one bound higher, 0.995 and 0.994 of the turns.
   */
  private static final int FIRST_PART_OF_FEW = 9;

  // LargeSheetWork: half and double the same plans and bounds, 0.947 and 0.963 of the turns.
  private static final int FIRST_PART = 512;

  /**
   * A millionth of a sheet: prices that a linear program found differ by so much from rounding
   * alone, and lists of patterns between which only that lies are the same list.
   */
  private static final long ROUNDING = GuillotineBound.SCALE >> 20;

  // HalfSheetWork: 2, the least, and 6 give the same plans and bounds, 1.004 and 0.992 of the
  // turns.
  private static final long GROWTH = 3;

  // Not tuned: ends a search that patience does not. Of ten of our lists, 1,000 questions each,
  // half
  // and double give the same plans; 4 is the most taken, by a list that was proven after 10,984.
  private static final int MOST_TRIES = 40;
  // LargeSheetWork: half and double the same plans and bounds, 0.998 and 1.003 of the turns.
  private static final int REPACKINGS = 1_000;

  private final Patience patience;
  private final SplittableRandom random = new SplittableRandom(SEED);
  private final List<PackedSheet> packed = new ArrayList<>();
  private int tries;

  SheetCovering(Patience patience) {
    this.patience = patience;
  }

  /** The plan that was found. */
  List<PackedSheet> packed() {
    return List.copyOf(packed);
  }

  /**
   * Searches.
   *
   * @param bound of the task
   * @param sheets new ones that may be bought
   * @return impossible only if no guillotine plan buys so few or fewer
   */
  Outcome search(SheetTask task, GuillotineBound bound, int sheets) {
    return search(task, bound, sheets, false);
  }

  private Outcome search(SheetTask task, GuillotineBound bound, int sheets, boolean isRest) {
    if (bound.atLeast() > sheets) {
      return Outcome.IMPOSSIBLE;
    }
    if (isRest) {
      SheetRepacking repacking = new SheetRepacking(task);
      if (!repacking.isPacked()) {
        return Outcome.GIVEN_UP;
      }
      repacking.improve(REPACKINGS, sheets, patience);
      if (repacking.newSheets() <= sheets) {
        repacking.best().forEach(sheet -> packed.add(sheet.renamed(task)));
        return Outcome.FOUND;
      }
    }
    long waste = bound.waste(sheets);
    boolean isFew = task.pieces() <= FEW_PIECES;
    int most = isFew ? MOST_BLOCKS : MOST_BLOCKS_OF_MANY;
    List<SheetPattern> patterns = List.of();
    for (long part = Math.max(ROUNDING, waste / (isFew ? FIRST_PART_OF_FEW : FIRST_PART));
        ;
        part = GROWTH * part) {
      long allowed = Math.min(part, waste);
      long[] asked = asked(task, bound, allowed);
      GuillotineBlocks blocks = blocks(task, bound, asked, task.counts(), most);
      if (patience.isSpent()) {
        return Outcome.GIVEN_UP;
      }
      if (!blocks.isComplete()) {
        return takeSome(
            task, sheets, patterns.isEmpty() ? ofSomeKinds(task, bound, asked) : patterns);
      }
      if (blocks.leastMissing() > waste - allowed) {
        return searchAll(task, sheets, blocks.patterns(asked(task, bound, waste)));
      }
      while (GROWTH * part - allowed < blocks.leastMissing()) {
        part = GROWTH * part;
      }
      patterns = blocks.patterns(asked(task, bound, part));
    }
  }

  private GuillotineBlocks blocks(
      SheetTask task, GuillotineBound bound, long[] asked, int[] counts, int most) {
    GuillotineValues values = bound.values();
    values.ask(asked);
    GuillotineBlocks blocks = new GuillotineBlocks(task, bound.grid(), values, counts, most);
    blocks.build(patience);
    return blocks;
  }

  /** Patterns of a random half of the kinds, or of a half of these, until they can be listed. */
  private List<SheetPattern> ofSomeKinds(SheetTask task, GuillotineBound bound, long[] asked) {
    int[] counts = task.counts();
    while (!patience.isSpent() && IntStream.of(counts).anyMatch(count -> count > 0)) {
      for (int kind = 0; kind < counts.length; kind++) {
        counts[kind] = random.nextBoolean() ? counts[kind] : 0;
      }
      GuillotineBlocks blocks = blocks(task, bound, asked, counts, MOST_BLOCKS_OF_MANY);
      if (blocks.isComplete()) {
        return blocks.patterns(asked);
      }
    }
    return List.of();
  }

  private static long[] asked(SheetTask task, GuillotineBound bound, long waste) {
    GuillotineValues values = bound.values();
    return IntStream.range(0, task.stocks().size())
        .mapToLong(stock -> values.most(stock) - waste)
        .toArray();
  }

  private Outcome searchAll(SheetTask task, int sheets, List<SheetPattern> patterns) {
    PatternSearch search = new PatternSearch(MOST_NODES, patience);
    Outcome outcome = search.search(task.counts(), task.supply(), sheets, patterns);
    if (outcome == Outcome.FOUND) {
      int[] wanted = task.counts();
      search.cover().forEach(pattern -> packed.add(new PackedSheet(task, pattern, wanted)));
    }
    return outcome;
  }

  private Outcome takeSome(SheetTask task, int sheets, List<SheetPattern> patterns) {
    for (int attempt = 0; tries++ < MOST_TRIES && !patience.isSpent(); attempt++) {
      int[] wanted = task.counts();
      int[] supply = task.supply();
      List<SheetPattern> taken = taken(wanted, supply, sheets, patterns, attempt);
      if (taken.isEmpty()) {
        return Outcome.GIVEN_UP;
      }
      int bought = (int) taken.stream().filter(pattern -> pattern.stock() == SheetTask.NEW).count();
      SheetTask rest = task.rest(wanted, supply);
      GuillotineBound bound = GuillotineBound.of(rest, sheets - bought + 1, patience);
      if (search(rest, bound, sheets - bought, true) == Outcome.FOUND) {
        int[] all = task.counts();
        taken.forEach(pattern -> packed.add(new PackedSheet(task, pattern, all)));
        return Outcome.FOUND;
      }
    }
    return Outcome.GIVEN_UP;
  }

  /** Takes patterns for a third of the sheets or less; counts off what they use. */
  private List<SheetPattern> taken(
      int[] wanted, int[] supply, int sheets, List<SheetPattern> patterns, int attempt) {
    List<SheetPattern> taken = new ArrayList<>();
    List<SheetPattern> left = patterns;
    double[] amounts = new double[patterns.size()];
    int part = Math.max(1, sheets / (3 + 2 * attempt));
    while (taken.size() < part && !patience.isSpent()) {
      List<SheetPattern> open = new ArrayList<>();
      double[] start = new double[left.size()];
      for (int at = 0; at < left.size(); at++) {
        if (fits(left.get(at), wanted, supply)) {
          start[open.size()] = amounts[at];
          open.add(left.get(at));
        }
      }
      if (open.isEmpty()) {
        break;
      }
      PatternPrices prices =
          new PatternPrices(
              wanted,
              supply,
              supply[SheetTask.NEW],
              open,
              Arrays.copyOf(start, open.size()),
              patience);
      left = open;
      amounts = prices.amounts();
      for (int at = 0; at < amounts.length; at++) {
        if (amounts[at] >= PatternSearch.WHOLE
            && taken.size() < part
            && fits(open.get(at), wanted, supply)) {
          take(open.get(at), wanted, supply, taken);
        }
      }
      int likeliest = likeliest(amounts, attempt > 0);
      if (taken.size() < part && fits(open.get(likeliest), wanted, supply)) {
        take(open.get(likeliest), wanted, supply, taken);
      }
    }
    return taken;
  }

  private static void take(
      SheetPattern pattern, int[] wanted, int[] supply, List<SheetPattern> taken) {
    for (int kind : pattern.block().kinds()) {
      wanted[kind]--;
    }
    supply[pattern.stock()]--;
    taken.add(pattern);
  }

  private static boolean fits(SheetPattern pattern, int[] wanted, int[] supply) {
    int run = 0;
    int last = -1;
    for (int kind : pattern.block().kinds()) {
      run = kind == last ? run + 1 : 1;
      last = kind;
      if (run > wanted[kind]) {
        return false;
      }
    }
    return supply[pattern.stock()] > 0;
  }

  private int likeliest(double[] amounts, boolean vary) {
    int best = 0;
    double most = -1;
    for (int at = 0; at < amounts.length; at++) {
      double likely =
          vary && amounts[at] > 0 ? amounts[at] * (0.5 + random.nextDouble()) : amounts[at];
      if (likely > most) {
        most = likely;
        best = at;
      }
    }
    return best;
  }
}
