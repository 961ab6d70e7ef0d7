package sheathwright.cutting.sheet;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;
import sheathwright.cutting.program.CoveringProgram;

/**
 * A number of new sheets that no guillotine plan can undercut: the linear program over all cutting
 * patterns, solved by column generation (Gilmore and Gomory 1961) with the guillotine values of a
 * grid as its pricing.
 *
 * <p>The bound never rests on floating point. The program's prices are rounded down to whole
 * numbers, the most that one sheet can bring at those prices is found in whole numbers, and the
 * bound is the quotient (Farley 1990, from memory); so it holds for any prices whatever.
 */
final class GuillotineBound {

  /** Worth of a whole sheet, about. */
  static final long SCALE = 1L << 36;

  /** Keeps sums far from the largest whole number, whatever the program says. */
  static final long HIGHEST_PRICE = 4 * SCALE;

  // On our lists to 60 pieces, 2 s each: 15 of 16 proven, 4.7 s; with {0} alone 14, 5.4 s.
  private static final double[] WEIGHTS = {0.8, 0.5, 0.2, 0};

  private final SheetTask task;
  private final int kinds;
  private final int stocks;
  private final GuillotineGrid grid;
  private final GuillotineValues values;
  private final CoveringProgram program;
  private final Set<String> known = new HashSet<>();
  private long[] worth;
  private long over = 0;
  private long under = 1;

  private GuillotineBound(SheetTask task, Patience patience) {
    this.task = task;
    kinds = task.kinds().size();
    stocks = task.stocks().size();
    grid = GuillotineGrid.of(task.kinds(), task.stocks());
    values = new GuillotineValues(grid);
    worth = new long[kinds];
    int[] demand = new int[kinds + stocks - 1];
    for (int kind = 0; kind < kinds; kind++) {
      demand[kind] = task.kinds().get(kind).count();
    }
    for (int stock = 1; stock < stocks; stock++) {
      demand[kinds + stock - 1] = -task.stocks().get(stock).count();
    }
    program = new CoveringProgram(demand, 2, patience);
  }

  /**
   * @param enough the search stops when the bound has reached this
   */
  static GuillotineBound of(SheetTask task, int enough, Patience patience) {
    GuillotineBound bound = new GuillotineBound(task, patience);
    bound.improve(enough, patience);
    return bound;
  }

  private void improve(int enough, Patience patience) {
    tryPrices(byArea());
    boolean open = atLeast() < enough;
    while (open && !patience.isSpent()) {
      open = program.solve() && priceAndAdd(program.prices(), enough);
    }
  }

  /**
   * Tries prices between those of the best bound and the program's (Wentges 1997, from memory), and
   * the program's own where the mixture finds no pattern.
   *
   * @return whether the program has a new column that lowers its cost
   */
  private boolean priceAndAdd(double[] prices, int enough) {
    for (double weight : WEIGHTS) {
      tryPrices(mixed(prices, weight));
      if (atLeast() >= enough) {
        return false;
      }
      if (addColumns(prices)) {
        return true;
      }
    }
    return false;
  }

  private void tryPrices(long[] rounded) {
    for (int kind = 0; kind < kinds; kind++) {
      rounded[kind] = Math.min(rounded[kind], HIGHEST_PRICE);
    }
    values.setWorth(rounded);
    take(rounded);
  }

  private long[] byArea() {
    SheetTask.Stock sheet = task.stocks().get(SheetTask.NEW);
    return task.kinds().stream()
        .mapToLong(
            kind ->
                (long)
                    ((double) kind.width()
                        / sheet.width()
                        * ((double) kind.height() / sheet.height())
                        * SCALE))
        .toArray();
  }

  private long[] mixed(double[] prices, double weight) {
    double unit = values.most(SheetTask.NEW) > 0 ? (double) SCALE / under : 1;
    long[] mixed = new long[kinds];
    for (int kind = 0; kind < kinds; kind++) {
      mixed[kind] =
          (long) (weight * worth[kind] * unit + (1 - weight) * Math.max(0, prices[kind]) * SCALE);
    }
    return mixed;
  }

  private void take(long[] rounded) {
    long sum = 0;
    for (int kind = 0; kind < kinds; kind++) {
      sum += values.worth(kind) * task.kinds().get(kind).count();
    }
    for (int stock = 1; stock < stocks; stock++) {
      sum -= values.most(stock) * task.stocks().get(stock).count();
    }
    long most = values.most(SheetTask.NEW);
    if (most > 0 && (double) sum / most > (double) over / under) {
      over = sum;
      under = most;
      worth = rounded;
    }
  }

  private boolean addColumns(double[] prices) {
    long[] asked = new long[stocks];
    asked[SheetTask.NEW] = SCALE;
    for (int stock = 1; stock < stocks; stock++) {
      asked[stock] = (long) (Math.min(2, Math.max(0, prices[kinds + stock - 1])) * SCALE);
    }
    values.ask(asked);
    boolean added = false;
    for (int kind = 0; kind < kinds; kind++) {
      if (!values.isOnGrid(kind)) {
        continue;
      }
      int[] counts = new int[kinds];
      int stock = values.patternWith(kind, counts);
      double gain = stock == SheetTask.NEW ? -1 : -prices[kinds + stock - 1];
      for (int other = 0; other < kinds; other++) {
        gain += counts[other] * prices[other];
      }
      if (gain > CoveringProgram.SMALLEST_GAIN) {
        added |= add(stock, counts);
      }
    }
    return added;
  }

  private boolean add(int stock, int[] counts) {
    if (!known.add(stock + Arrays.toString(counts))) {
      return false;
    }
    boolean isNew = stock == SheetTask.NEW;
    program.add(isNew ? 1 : 0, counts, isNew ? -1 : kinds + stock - 1);
    return true;
  }

  /** No guillotine plan buys fewer new sheets. */
  int atLeast() {
    return (int) Math.max(0, -Math.floorDiv(-over, under));
  }

  /**
   * What a plan that buys so many new sheets may waste in all, at the prices of the bound. Never
   * negative unless the bound forbids the plan.
   */
  long waste(int sheets) {
    return sheets * under - over;
  }

  GuillotineGrid grid() {
    return grid;
  }

  /** Values at the prices of the bound. */
  GuillotineValues values() {
    values.setWorth(worth);
    return values;
  }

  /** What proves the bound, in the caller's own indexes; a part is of one new sheet. */
  Certificate certificate(SheetOrder order) {
    GuillotineValues best = values();
    Long[] ofPiece = new Long[order.pieces().size()];
    for (int kind = 0; kind < kinds; kind++) {
      for (int piece : task.piecesOfKind(kind)) {
        ofPiece[piece] = best.worth(kind);
      }
    }
    Long[] ofOffcut = Collections.nCopies(order.offcuts().size(), 0L).toArray(new Long[0]);
    for (int stock = 1; stock < stocks; stock++) {
      for (int offcut : task.stocks().get(stock).offcuts()) {
        ofOffcut[offcut] = best.most(stock);
      }
    }
    return new Certificate(under, List.of(ofPiece), List.of(ofOffcut), atLeast());
  }
}
