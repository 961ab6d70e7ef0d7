package sheathwright.cutting.stick;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.program.Certificate;

/**
 * An order made plain: every piece longer by one kerf, every stick longer by one kerf and shorter
 * by its two trims, so that pieces fit exactly when their lengths add up to no more than the stick;
 * equal pieces gathered, useless stock dropped, lengths divided by what divides every piece.
 */
final class StickProblem {

  /** Lengths of the pieces, longest first, all different. */
  final long[] length;

  /** How many of each length. */
  final int[] demand;

  /** Room on a stick of each stock that is of use. */
  final long[] room;

  /** Price of each stock that is of use. */
  final long[] price;

  /** The most sticks of each stock that a sensible plan takes. */
  final int[] most;

  private final StickOrder order;
  private final int[] stockIndex;
  private final List<List<Integer>> pieceIndexes;

  private StickProblem(
      StickOrder order,
      int[] stockIndex,
      List<List<Integer>> pieceIndexes,
      long[] length,
      long[] room) {
    this.order = order;
    this.stockIndex = stockIndex;
    this.pieceIndexes = pieceIndexes;
    this.length = length;
    this.room = room;
    demand = pieceIndexes.stream().mapToInt(List::size).toArray();
    int pieces = pieces();
    price = Arrays.stream(stockIndex).mapToLong(k -> order.stock().get(k).price()).toArray();
    most =
        Arrays.stream(stockIndex)
            .map(k -> Math.min(pieces, order.stock().get(k).available()))
            .toArray();
  }

  /**
   * The order made plain.
   *
   * @throws CannotBeCutException if a piece is longer than every stick that there is
   */
  static StickProblem of(StickOrder order) {
    TreeMap<Long, List<Integer>> byLength = new TreeMap<>(Comparator.reverseOrder());
    long longestRoom = 0;
    for (int k = 0; k < order.stock().size(); k++) {
      if (order.stock().get(k).available() > 0) {
        longestRoom = Math.max(longestRoom, room(order, k));
      }
    }
    for (int i = 0; i < order.pieces().size(); i++) {
      StickPiece piece = order.pieces().get(i);
      if (piece.count() > 0) {
        if (piece.length() + order.kerf() > longestRoom) {
          throw new CannotBeCutException(
              i, "piece " + i + " of length " + piece.length() + " is longer than every stick");
        }
        byLength
            .computeIfAbsent(piece.length() + order.kerf(), length -> new ArrayList<>())
            .addAll(Collections.nCopies(piece.count(), i));
      }
    }
    int[] stocks = usefulStocks(order, byLength);
    long divisor =
        CommonUnit.divisor(byLength.keySet().stream().mapToLong(length -> length).toArray());
    return new StickProblem(
        order,
        stocks,
        List.copyOf(byLength.values()),
        byLength.keySet().stream().mapToLong(length -> length / divisor).toArray(),
        Arrays.stream(stocks).mapToLong(k -> room(order, k) / divisor).toArray());
  }

  private static long room(StickOrder order, int stock) {
    return order.stock().get(stock).length() - 2 * order.trim() + order.kerf();
  }

  /** Stock that holds some piece, and that no other stock betters in length, price and supply. */
  private static int[] usefulStocks(StickOrder order, TreeMap<Long, List<Integer>> byLength) {
    int pieces = byLength.values().stream().mapToInt(List::size).sum();
    List<Integer> useful = new ArrayList<>();
    for (int k = 0; k < order.stock().size(); k++) {
      StockLength stock = order.stock().get(k);
      boolean needed = stock.available() > 0 && pieces > 0 && room(order, k) >= byLength.lastKey();
      for (int j = 0; j < order.stock().size() && needed; j++) {
        StockLength other = order.stock().get(j);
        boolean atLeastAsGood =
            other.available() >= pieces
                && other.length() >= stock.length()
                && other.price() <= stock.price();
        boolean same = other.length() == stock.length() && other.price() == stock.price();
        needed = j == k || !atLeastAsGood || same && j > k && stock.available() >= pieces;
      }
      if (needed) {
        useful.add(k);
      }
    }
    return useful.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * An easier problem: so many neighboring lengths at a time are taken for the shortest of them.
   * Whatever can be cut in this problem can be cut in that one.
   */
  StickProblem grouped(int together) {
    int groups = (lengths() + together - 1) / together;
    long[] shortest = new long[groups];
    List<List<Integer>> indexes = new ArrayList<>();
    for (int group = 0; group < groups; group++) {
      int end = Math.min(lengths(), (group + 1) * together);
      shortest[group] = length[end - 1];
      indexes.add(
          pieceIndexes.subList(group * together, end).stream().flatMap(List::stream).toList());
    }
    return new StickProblem(order, stockIndex, indexes, shortest, room);
  }

  /** Number of different lengths of pieces. */
  int lengths() {
    return length.length;
  }

  /** Number of different stocks. */
  int stocks() {
    return room.length;
  }

  /** Number of pieces. */
  int pieces() {
    return Arrays.stream(demand).sum();
  }

  /** What the sticks of these patterns cost. */
  long cost(List<StickPattern> sticks) {
    return sticks.stream().mapToLong(stick -> price[stick.stock()]).sum();
  }

  /**
   * The plan in the caller's own indexes. Pieces that patterns cut beyond the demand are left out,
   * and sticks that nothing is cut from then are not bought.
   */
  StickPlan plan(List<StickPattern> sticks, long atLeast, Certificate certificate) {
    List<Deque<Integer>> wanted =
        pieceIndexes.stream().<Deque<Integer>>map(ArrayDeque::new).toList();
    List<CutStick> cut = new ArrayList<>();
    long cost = 0;
    for (StickPattern stick : sticks) {
      List<Integer> pieces = new ArrayList<>();
      for (int i = 0; i < stick.piece().length; i++) {
        Deque<Integer> left = wanted.get(stick.piece()[i]);
        for (int n = 0; n < stick.count()[i] && !left.isEmpty(); n++) {
          pieces.add(left.remove());
        }
      }
      if (!pieces.isEmpty()) {
        cut.add(new CutStick(stockIndex[stick.stock()], pieces));
        cost += price[stick.stock()];
      }
    }
    return new StickPlan(cut, cost, atLeast, certificate);
  }

  /** What proves a bound, in the caller's own indexes. */
  Certificate certificate(long parts, long[] worth, long[] earning, long atLeast) {
    Long[] ofPiece = Collections.nCopies(order.pieces().size(), 0L).toArray(new Long[0]);
    for (int i = 0; i < worth.length; i++) {
      for (int piece : pieceIndexes.get(i)) {
        ofPiece[piece] = worth[i];
      }
    }
    Long[] ofStock = new Long[order.stock().size()];
    for (int k = 0; k < ofStock.length; k++) {
      ofStock[k] = earning(k, earning);
    }
    return new Certificate(parts, List.of(ofPiece), List.of(ofStock), atLeast);
  }

  /** Stock that holds no piece earns nothing; other stock no more than what betters it. */
  private long earning(int orderStock, long[] earning) {
    StockLength stock = order.stock().get(orderStock);
    long shortest =
        order.pieces().stream()
            .filter(piece -> piece.count() > 0)
            .mapToLong(StickPiece::length)
            .min()
            .orElse(0);
    long least = room(order, orderStock) < shortest + order.kerf() ? 0 : Long.MAX_VALUE;
    for (int k = 0; k < earning.length; k++) {
      StockLength kept = order.stock().get(stockIndex[k]);
      if (stockIndex[k] == orderStock) {
        return earning[k];
      }
      if (kept.length() >= stock.length() && kept.price() <= stock.price()) {
        least = Math.min(least, earning[k]);
      }
    }
    return least == Long.MAX_VALUE ? 0 : least;
  }
}
