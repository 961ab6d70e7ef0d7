package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sheathwright.cutting.CannotBeCutException;

/**
 * An order without the saw: the kerf is added once to every piece and every stock, which is exact,
 * since the last kerf may fall off the edge. Equal pieces are one kind.
 */
final class SheetTask {

  /** Pieces of one size, kerf included. */
  record Kind(long width, long height, int count) {}

  /** New sheets or offcuts of one size, kerf included; {@code offcuts} are indexes in the order. */
  record Stock(long width, long height, int count, List<Integer> offcuts) {

    boolean holds(Kind kind) {
      return kind.width() <= width && kind.height() <= height;
    }
  }

  /** The stock that is bought. */
  static final int NEW = 0;

  private final List<Kind> kinds;
  private final List<Stock> stocks;
  private final List<List<Integer>> piecesOfKind;
  private final List<Integer> origins;
  private final int pieces;

  /**
   * @throws CannotBeCutException if a piece fits neither a sheet nor an offcut
   */
  SheetTask(SheetOrder order) {
    long kerf = order.kerf();
    Map<List<Long>, List<Integer>> bySize = new LinkedHashMap<>();
    for (int index = 0; index < order.pieces().size(); index++) {
      SheetPiece piece = order.pieces().get(index);
      List<Integer> same =
          bySize.computeIfAbsent(
              List.of(piece.width() + kerf, piece.height() + kerf), size -> new ArrayList<>());
      for (int copy = 0; copy < piece.count(); copy++) {
        same.add(index);
      }
    }
    piecesOfKind = List.copyOf(bySize.values());
    kinds =
        bySize.entrySet().stream()
            .map(
                entry ->
                    new Kind(entry.getKey().get(0), entry.getKey().get(1), entry.getValue().size()))
            .toList();
    origins = IntStream.range(0, kinds.size()).boxed().toList();
    pieces = kinds.stream().mapToInt(Kind::count).sum();
    stocks = stocks(order, kinds, pieces);
    for (int kind = 0; kind < kinds.size(); kind++) {
      Kind wanted = kinds.get(kind);
      if (stocks.stream().noneMatch(stock -> stock.holds(wanted))) {
        throw tooLarge(order, piecesOfKind.get(kind).get(0));
      }
    }
  }

  private SheetTask(SheetTask whole, int[] wanted, int[] supply) {
    List<Integer> left =
        IntStream.range(0, wanted.length).filter(kind -> wanted[kind] > 0).boxed().toList();
    kinds =
        left.stream()
            .map(
                kind ->
                    new Kind(
                        whole.kinds.get(kind).width(),
                        whole.kinds.get(kind).height(),
                        wanted[kind]))
            .toList();
    stocks =
        IntStream.range(0, supply.length)
            .mapToObj(
                stock ->
                    new Stock(
                        whole.stocks.get(stock).width(),
                        whole.stocks.get(stock).height(),
                        supply[stock],
                        whole.stocks.get(stock).offcuts()))
            .toList();
    piecesOfKind = left.stream().map(whole.piecesOfKind::get).toList();
    origins = left.stream().map(whole.origins::get).toList();
    pieces = kinds.stream().mapToInt(Kind::count).sum();
  }

  /**
   * What is left of this task.
   *
   * @param wanted of each kind still
   * @param supply of each stock still
   */
  SheetTask rest(int[] wanted, int[] supply) {
    return new SheetTask(this, wanted, supply);
  }

  private static List<Stock> stocks(SheetOrder order, List<Kind> kinds, int pieces) {
    Map<List<Long>, List<Integer>> bySize = new LinkedHashMap<>();
    for (int index = 0; index < order.offcuts().size(); index++) {
      Offcut offcut = order.offcuts().get(index);
      List<Integer> same =
          bySize.computeIfAbsent(
              List.of(offcut.width() + order.kerf(), offcut.height() + order.kerf()),
              size -> new ArrayList<>());
      for (int copy = 0; copy < offcut.count() && same.size() < pieces; copy++) {
        same.add(index);
      }
    }
    List<Stock> stocks = new ArrayList<>();
    stocks.add(
        new Stock(
            order.sheetWidth() + order.kerf(),
            order.sheetHeight() + order.kerf(),
            pieces,
            List.of()));
    bySize.forEach(
        (size, offcuts) -> {
          Stock stock = new Stock(size.get(0), size.get(1), offcuts.size(), List.copyOf(offcuts));
          if (kinds.stream().anyMatch(stock::holds)) {
            stocks.add(stock);
          }
        });
    return List.copyOf(stocks);
  }

  private static CannotBeCutException tooLarge(SheetOrder order, int index) {
    SheetPiece piece = order.pieces().get(index);
    boolean turned = piece.height() <= order.sheetWidth() && piece.width() <= order.sheetHeight();
    String size = "A piece of " + piece.width() + " by " + piece.height() + " units ";
    return new CannotBeCutException(
        index,
        turned
            ? size + "would fit the sheet only with a quarter turn, across its strength axis."
            : size + "fits neither the sheet nor an offcut.");
  }

  List<Kind> kinds() {
    return kinds;
  }

  /** New sheets first, then offcuts. */
  List<Stock> stocks() {
    return stocks;
  }

  /** What this kind is in the task for the whole order. */
  int origin(int kind) {
    return origins.get(kind);
  }

  /** Indexes into the order's pieces, one for every copy. */
  List<Integer> piecesOfKind(int kind) {
    return piecesOfKind.get(kind);
  }

  /** How many pieces are wanted. */
  int pieces() {
    return pieces;
  }

  /** How many of each stock there are. */
  int[] supply() {
    return stocks.stream().mapToInt(Stock::count).toArray();
  }

  /** How many of each kind are wanted. */
  int[] counts() {
    return kinds.stream().mapToInt(Kind::count).toArray();
  }
}
