package sheathwright.job;

import static java.util.Comparator.comparingDouble;
import static java.util.Comparator.reverseOrder;
import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.CutStick;
import sheathwright.cutting.Patience;
import sheathwright.cutting.StickCutting;
import sheathwright.cutting.StickOrder;
import sheathwright.cutting.StickPiece;
import sheathwright.cutting.StickPlan;
import sheathwright.cutting.StockLength;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;

/** A list of pieces cut out of sticks of several lengths and prices: a line for each stick. */
final class StickCutter {

  static final Map<String, String> PRESETS = presets();

  private static final int CENTS = 2;

  private final List<Double> stock;
  private final List<Double> prices;
  private final List<Double> onHand;
  private final double kerf;
  private final double trim;
  private final List<PieceRows.Row> rows;
  private final CommonUnit inches;
  private final CommonUnit dollars;

  private StickCutter(CsvFile file, SolverOptions options) {
    stock = options.numbers("stock_ft", 0.5, 100);
    prices = options.numbers("stock_usd", 0, 100_000);
    onHand = options.numbers("on_hand_in", 1, 1_200);
    kerf = options.number("kerf_in", 0, 2);
    trim = options.number("trim_in", 0, 24);
    if (stock.size() != prices.size() || stock.isEmpty()) {
      throw new RefusedException(
          "stock_ft names %d lengths and stock_usd %d prices; each length takes one price: stock_ft=8,10,12 stock_usd=4.10,5.35,6.60"
              .formatted(stock.size(), prices.size()));
    }
    rows = PieceRows.of(file, List.of("length_in"));
    DoubleStream wanted = rows.stream().mapToDouble(row -> row.lengths().get(0));
    DoubleStream had =
        DoubleStream.concat(
            stock.stream().mapToDouble(feet -> feet * 12),
            onHand.stream().mapToDouble(Double::doubleValue));
    inches =
        CommonUnit.of(
            DoubleStream.concat(DoubleStream.of(kerf, trim), DoubleStream.concat(had, wanted))
                .toArray());
    dollars = CommonUnit.of(prices.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static Map<String, String> presets() {
    Map<String, String> presets = new LinkedHashMap<>();
    presets.put("stock_ft", "");
    presets.put("stock_usd", "");
    presets.put("kerf_in", "1/8");
    presets.put("trim_in", "0");
    presets.put("on_hand_in", "");
    presets.put("seconds", "10");
    return presets;
  }

  static SolvedTable cut(CsvFile file, SolverOptions options, Patience patience) {
    StickCutter cutter = new StickCutter(file, options);
    try {
      return cutter.answered(StickCutting.plan(cutter.order(), patience));
    } catch (CannotBeCutException tooLong) {
      if (tooLong.piece() < 0) {
        throw new RefusedException(file.name() + ": " + tooLong.getMessage());
      }
      PieceRows.Row row = cutter.rows.get(tooLong.piece());
      throw PieceRows.cannotBeCut(
          file,
          row,
          "%s in is longer than every stick less its trim"
              .formatted(Shown.plain(row.lengths().get(0))));
    }
  }

  private StickOrder order() {
    List<StockLength> lengths = new ArrayList<>();
    for (int i = 0; i < stock.size(); i++) {
      lengths.add(
          new StockLength(
              inches.units(stock.get(i) * 12), dollars.units(prices.get(i)), StockLength.ANY));
    }
    onHand.forEach(length -> lengths.add(new StockLength(inches.units(length), 0, 1)));
    List<StickPiece> pieces =
        rows.stream()
            .map(row -> new StickPiece(inches.units(row.lengths().get(0)), row.count()))
            .toList();
    return new StickOrder(lengths, pieces, inches.units(kerf), inches.units(trim));
  }

  private SolvedTable answered(StickPlan plan) {
    List<List<String>> lines = new ArrayList<>();
    for (CutStick stick : longestFirst(plan)) {
      boolean isBought = stick.stock() < stock.size();
      double length = length(stick);
      List<Double> pieces = pieces(stick);
      lines.add(
          List.of(
              Shown.plain(isBought ? stock.get(stick.stock()) : length / 12),
              isBought ? money(dollars.units(prices.get(stick.stock()))) : "0.00",
              pieces.stream().map(Shown::plain).collect(joining("+")),
              Shown.plain(waste(length, pieces))));
    }
    return new SolvedTable(
        List.of("stock_ft", "usd", "pieces", "waste_in"),
        lines,
        "total %s usd, at least %s, %s"
            .formatted(
                money(plan.cost()), money(plan.atLeast()), SolvedTable.standing(plan.isProven())));
  }

  /** The sticks as they are bought and cut: the longest first, alike ones together. */
  private List<CutStick> longestFirst(StickPlan plan) {
    return plan.sticks().stream()
        .sorted(
            comparingDouble((CutStick stick) -> -length(stick))
                .thenComparing(stick -> pieces(stick).toString(), reverseOrder()))
        .toList();
  }

  private double length(CutStick stick) {
    boolean isBought = stick.stock() < stock.size();
    return isBought ? stock.get(stick.stock()) * 12 : onHand.get(stick.stock() - stock.size());
  }

  private List<Double> pieces(CutStick stick) {
    return stick.pieces().stream().map(piece -> rows.get(piece).lengths().get(0)).toList();
  }

  /** What is left between the trims, once every cut between two pieces is made. */
  private double waste(double length, List<Double> pieces) {
    long used = pieces.stream().mapToLong(inches::units).sum();
    long cuts = (pieces.size() - 1) * inches.units(kerf);
    return inches.length(inches.units(length) - 2 * inches.units(trim) - used - cuts);
  }

  /** Dollars with their cents, and with whatever the prices have beyond them. */
  private String money(long units) {
    BigDecimal amount = BigDecimal.valueOf(dollars.length(units)).stripTrailingZeros();
    return amount
        .setScale(Math.max(CENTS, amount.scale()), RoundingMode.UNNECESSARY)
        .toPlainString();
  }
}
