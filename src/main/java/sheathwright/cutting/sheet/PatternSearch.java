package sheathwright.cutting.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import sheathwright.cutting.Patience;

/**
 * Covers what is wanted by a given list of patterns with so many new sheets, or shows that this
 * cannot be done. Depth first: a kind is covered by each pattern that holds it in turn; patterns
 * that would waste more than the linear program leaves are dropped on the way.
 */
final class PatternSearch {

  /** How a search ended. */
  enum Outcome {
    FOUND,
    IMPOSSIBLE,
    GIVEN_UP
  }

  /** What is still wanted and on hand. */
  private record Rest(int[] wanted, int[] supply, int sheets) {

    Rest without(SheetPattern taken) {
      int[] wantedNow = wanted.clone();
      for (int kind : taken.block().kinds()) {
        wantedNow[kind] = Math.max(0, wantedNow[kind] - 1);
      }
      int[] supplyNow = supply.clone();
      supplyNow[taken.stock()]--;
      return new Rest(wantedNow, supplyNow, taken.stock() == SheetTask.NEW ? sheets - 1 : sheets);
    }

    boolean has(int stock) {
      return stock == SheetTask.NEW ? sheets > 0 : supply[stock] > 0;
    }
  }

  /** A pattern, how much of it the fractional mix takes, and what it wastes. */
  private record Candidate(SheetPattern pattern, double amount, long wasted) {}

  private record Prices(long[] worth, long[] price) {}

  /**
   * What the mix takes so much of, it takes whole: the program errs by 1e-7. HalfSheetWork: 0.99
   * and 0.9999 give the same plans and bounds in as many turns.
   */
  static final double WHOLE = 0.999;

  private static final Comparator<Candidate> LIKELY_FIRST =
      Comparator.comparingDouble((Candidate candidate) -> -candidate.amount())
          .thenComparingLong(Candidate::wasted);

  private final int mostNodes;
  private final Patience patience;
  private final Deque<SheetPattern> cover = new ArrayDeque<>();
  private int nodes;

  PatternSearch(int mostNodes, Patience patience) {
    this.mostNodes = mostNodes;
    this.patience = patience;
  }

  /** The patterns of the cover that was found; they may hold more pieces than are wanted. */
  List<SheetPattern> cover() {
    return List.copyOf(cover);
  }

  /**
   * Searches.
   *
   * @param wanted of each kind
   * @param supply of each stock
   * @param sheets that may be bought
   */
  Outcome search(int[] wanted, int[] supply, int sheets, List<SheetPattern> patterns) {
    List<Candidate> candidates = new ArrayList<>();
    for (SheetPattern pattern : patterns) {
      candidates.add(new Candidate(pattern, 0, 0));
    }
    return search(new Rest(wanted, supply, sheets), candidates, null);
  }

  /**
   * @param known prices whose mix the candidates carry, or null where they must be found
   */
  private Outcome search(Rest rest, List<Candidate> candidates, Prices known) {
    if (IntStream.of(rest.wanted()).allMatch(count -> count == 0)) {
      return Outcome.FOUND;
    }
    if (++nodes > mostNodes || patience.isSpent()) {
      return Outcome.GIVEN_UP;
    }
    double[] amounts = candidates.stream().mapToDouble(Candidate::amount).toArray();
    Prices prices = known;
    if (known == null) {
      List<SheetPattern> patterns = candidates.stream().map(Candidate::pattern).toList();
      PatternPrices found =
          new PatternPrices(
              rest.wanted(), rest.supply(), rest.sheets(), patterns, amounts, patience);
      prices = new Prices(found.worth(), found.price());
      amounts = found.amounts();
    }
    long waste =
        PatternPrices.waste(
            rest.sheets(), rest.wanted(), rest.supply(), prices.worth(), prices.price());
    if (waste < 0) {
      return Outcome.IMPOSSIBLE;
    }
    List<Candidate> left = new ArrayList<>();
    for (int at = 0; at < amounts.length; at++) {
      SheetPattern pattern = candidates.get(at).pattern();
      long wasted =
          prices.price()[pattern.stock()]
              - PatternPrices.worth(pattern, prices.worth(), rest.wanted());
      if (rest.has(pattern.stock()) && wasted <= waste) {
        left.add(new Candidate(pattern, amounts[at], wasted));
      }
    }
    return branch(rest, left, prices);
  }

  private Outcome branch(Rest rest, List<Candidate> left, Prices prices) {
    int kind = kindToCover(rest.wanted(), left);
    List<Candidate> others = new ArrayList<>();
    List<Candidate> holders = new ArrayList<>();
    for (Candidate candidate : left) {
      (holds(candidate.pattern(), kind) ? holders : others).add(candidate);
    }
    holders.sort(LIKELY_FIRST);
    for (int at = 0; at < holders.size(); at++) {
      Candidate taken = holders.get(at);
      Rest now = rest.without(taken.pattern());
      List<Candidate> open = new ArrayList<>(others);
      if (now.wanted()[kind] > 0) {
        open.add(new Candidate(taken.pattern(), Math.max(0, taken.amount() - 1), taken.wasted()));
        open.addAll(holders.subList(at + 1, holders.size()));
      }
      cover.push(taken.pattern());
      Outcome deeper = search(now, open, taken.amount() >= WHOLE ? prices : null);
      if (deeper == Outcome.FOUND) {
        return deeper;
      }
      cover.pop();
      if (deeper == Outcome.GIVEN_UP) {
        return deeper;
      }
    }
    return Outcome.IMPOSSIBLE;
  }

  private static boolean holds(SheetPattern pattern, int kind) {
    for (int held : pattern.block().kinds()) {
      if (held == kind) {
        return true;
      }
    }
    return false;
  }

  /**
   * A kind of a pattern that the mix takes whole; if there is none, that of the fewest patterns.
   */
  private static int kindToCover(int[] wanted, List<Candidate> left) {
    int[] holders = new int[wanted.length];
    for (Candidate candidate : left) {
      int last = -1;
      for (int kind : candidate.pattern().block().kinds()) {
        if (wanted[kind] > 0 && candidate.amount() >= WHOLE) {
          return kind;
        }
        if (kind != last) {
          holders[kind]++;
        }
        last = kind;
      }
    }
    int scarcest = -1;
    for (int kind = 0; kind < wanted.length; kind++) {
      if (wanted[kind] > 0 && (scarcest < 0 || holders[kind] < holders[scarcest])) {
        scarcest = kind;
      }
    }
    return scarcest;
  }
}
