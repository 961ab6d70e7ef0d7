package sheathwright.cutting.sheet;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongUnaryOperator;

/**
 * Quick bounds on new sheets: the area of the pieces, and the same with lengths changed by dual
 * feasible functions, which make awkward pieces count for more (Fekete and Schepers 2001, from
 * memory). Whole numbers throughout.
 */
final class SheetAreaBound {

  // Sum of the bounds on our 32 lists, on 2,000 invented orders of patches, and on 2,000 of 5 to 44
  // kinds of any size: 1,207, 11,545 and 25,446 as it is.
  // Half 1,205, 11,516 and 25,092; double 1,207, 11,545 and 25,656.
  private static final int MOST_THRESHOLDS = 16;
  // Half 1,207, 11,463 and 25,423; double 1,207, 11,562 and 25,460.
  private static final int MOST_PARTS = 8;

  /** A dual feasible function and what it makes of the whole side. */
  private record Changed(LongUnaryOperator length, long whole) {}

  private SheetAreaBound() {}

  /** No plan, guillotine or not, buys fewer new sheets. */
  static int of(SheetTask task) {
    int byArea = byArea(task);
    SheetTask.Stock sheet = task.stocks().get(SheetTask.NEW);
    double largest =
        (double) MOST_PARTS * MOST_PARTS * sheet.width() * sheet.height() * (task.pieces() + 1.0);
    boolean withoutOffcuts = task.stocks().size() == 1;
    return withoutOffcuts && largest < Long.MAX_VALUE
        ? Math.max(byArea, byFunctions(task, sheet))
        : byArea;
  }

  private static int byArea(SheetTask task) {
    BigInteger area = BigInteger.ZERO;
    for (SheetTask.Kind kind : task.kinds()) {
      area = area.add(product(kind.width(), kind.height(), kind.count()));
    }
    for (SheetTask.Stock stock : task.stocks().subList(1, task.stocks().size())) {
      area = area.subtract(product(stock.width(), stock.height(), stock.count()));
    }
    SheetTask.Stock sheet = task.stocks().get(SheetTask.NEW);
    BigInteger[] sheets =
        area.max(BigInteger.ZERO).divideAndRemainder(product(sheet.width(), sheet.height(), 1));
    return sheets[0].intValueExact() + (sheets[1].signum() > 0 ? 1 : 0);
  }

  private static BigInteger product(long width, long height, long count) {
    return BigInteger.valueOf(width)
        .multiply(BigInteger.valueOf(height))
        .multiply(BigInteger.valueOf(count));
  }

  private static int byFunctions(SheetTask task, SheetTask.Stock sheet) {
    List<Changed> acrossFunctions =
        functions(sheet.width(), task.kinds().stream().mapToLong(SheetTask.Kind::width).toArray());
    List<Changed> upFunctions =
        functions(
            sheet.height(), task.kinds().stream().mapToLong(SheetTask.Kind::height).toArray());
    long most = 0;
    for (Changed across : acrossFunctions) {
      for (Changed up : upFunctions) {
        long sum = 0;
        for (SheetTask.Kind kind : task.kinds()) {
          sum +=
              across.length().applyAsLong(kind.width())
                  * up.length().applyAsLong(kind.height())
                  * kind.count();
        }
        most = Math.max(most, -Math.floorDiv(-sum, across.whole() * up.whole()));
      }
    }
    return (int) most;
  }

  private static List<Changed> functions(long whole, long[] lengths) {
    List<Changed> functions = new ArrayList<>();
    functions.add(new Changed(length -> length, whole));
    Arrays.stream(lengths)
        .map(length -> Math.min(length, whole - length + 1))
        .filter(threshold -> threshold > 0 && 2 * threshold <= whole)
        .distinct()
        .sorted()
        .limit(MOST_THRESHOLDS)
        .forEach(threshold -> functions.add(withoutShort(threshold, whole)));
    for (int parts = 1; parts <= MOST_PARTS; parts++) {
      functions.add(inParts(parts, whole));
    }
    return functions;
  }

  /** Drops what is shorter than the threshold; what leaves less than it beside counts as whole. */
  private static Changed withoutShort(long threshold, long whole) {
    return new Changed(
        length -> length > whole - threshold ? whole : length < threshold ? 0 : length, whole);
  }

  /** Rounds down to parts, of which one more than so many make the whole, and stretches them. */
  private static Changed inParts(int parts, long whole) {
    return new Changed(
        length ->
            (parts + 1) * length % whole == 0
                ? parts * length
                : (parts + 1) * length / whole * whole,
        parts * whole);
  }
}
