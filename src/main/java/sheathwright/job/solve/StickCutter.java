package sheathwright.job.solve;

import static java.util.Comparator.comparingDouble;
import static java.util.Comparator.reverseOrder;
import static java.util.stream.Collectors.joining;
import static sheathwright.job.solve.PlanTable.cell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;
import sheathwright.cutting.stick.CutStick;
import sheathwright.cutting.stick.StickCutting;
import sheathwright.cutting.stick.StickOrder;
import sheathwright.cutting.stick.StickPiece;
import sheathwright.cutting.stick.StickPlan;
import sheathwright.cutting.stick.StockLength;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.solve.PlanTable.What;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;

/** A list of pieces cut out of sticks of several lengths and prices: a line for each stick. */
final class StickCutter {

  private static final Field<Figure<Length>> LENGTH = PieceRows.length("length_in", "Length");

  private static final SolverOption<Figure<Length>> STOCK =
      new SolverOption<>(Field.number("stock_ft", "Stick lengths", Units.FOOT, 0.5, 100), "");
  private static final SolverOption<Figure<Money>> PRICE =
      new SolverOption<>(Field.number("stock_usd", "Their prices", Units.USD, 0, 100_000), "");
  private static final SolverOption<Figure<Length>> TRIM =
      new SolverOption<>(Field.number("trim_in", "Trim off each end", Units.INCH, 0, 24), "0");
  private static final SolverOption<Figure<Length>> ON_HAND =
      new SolverOption<>(Field.number("on_hand_in", "Offcuts on hand", Units.INCH, 1, 1_200), "");

  static final List<SolverOption<?>> OPTIONS =
      List.of(
          STOCK,
          PRICE,
          SolverOptions.KERF,
          TRIM,
          ON_HAND,
          SolverOptions.SECONDS,
          SolverOptions.CERTIFICATE);

  private static final int CENTS = 2;

  private final List<Double> stock;
  private final List<Double> prices;
  private final List<Double> onHand;
  private final double kerf;
  private final double trim;
  private final List<PieceRows.Alike> rows;
  private final CommonUnit inches;
  private final CommonUnit dollars;

  private StickCutter(CsvFile file, SolverOptions options) {
    stock = options.numbers(STOCK);
    prices = options.numbers(PRICE);
    onHand = options.numbers(ON_HAND);
    kerf = options.number(SolverOptions.KERF);
    trim = options.number(TRIM);
    if (stock.size() != prices.size() || stock.isEmpty()) {
      throw new RefusedException(
          "stock_ft names %s lengths and stock_usd %s prices; each length takes one price: stock_ft=8,10,12 stock_usd=4.10,5.35,6.60"
              .formatted(stock.size(), prices.size()));
    }
    rows = PieceRows.of(file, List.of(LENGTH));
    inches = unit();
    dollars = CommonUnit.of(prices.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** The same order with each piece a little less. */
  private StickCutter(StickCutter order) {
    stock = order.stock;
    prices = order.prices;
    onHand = order.onHand;
    kerf = order.kerf;
    trim = order.trim;
    rows = NearMiss.less(kerf, order.rows);
    inches = unit();
    dollars = order.dollars;
  }

  private CommonUnit unit() {
    DoubleStream wanted = rows.stream().mapToDouble(row -> row.lengths().get(0));
    DoubleStream had =
        DoubleStream.concat(
            stock.stream().mapToDouble(feet -> feet * 12),
            onHand.stream().mapToDouble(Double::doubleValue));
    return CommonUnit.of(
        DoubleStream.concat(DoubleStream.of(kerf, trim), DoubleStream.concat(had, wanted))
            .toArray());
  }

  static SolvedTable cut(CsvFile file, SolverOptions options, Patience patience) {
    StickCutter cutter = new StickCutter(file, options);
    try {
      StickPlan plan = StickCutting.plan(cutter.order(), patience);
      PlanTable proof = cutter.proof(plan);
      return cutter
          .answered(plan, cutter.nearMiss(plan, patience))
          .beside(options.textIfGiven(SolverOptions.CERTIFICATE), proof.headings(), proof.lines());
    } catch (CannotBeCutException tooLong) {
      if (tooLong.piece() < 0) {
        throw new RefusedException(file.name() + ": " + tooLong.getMessage());
      }
      PieceRows.Alike row = cutter.rows.get(tooLong.piece());
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

  /**
   * What a little less on each piece would save; only asked where the lengths leave room for it.
   */
  private Optional<String> nearMiss(StickPlan plan, Patience patience) {
    if (patience.isSpent() || !NearMiss.isPossible(kerf, rows)) {
      return Optional.empty();
    }
    StickCutter less = new StickCutter(this);
    if (less.costsAtLeast() >= dollars.length(plan.cost())) {
      return Optional.empty();
    }
    try {
      long cost = StickCutting.plan(less.order(), patience).cost();
      return cost < plan.cost()
          ? Optional.of(NearMiss.inWords(kerf, "shorter", money(cost) + " usd"))
          : Optional.empty();
    } catch (CannotBeCutException noneFound) {
      return Optional.empty();
    }
  }

  /** What all pieces cost at the price of the length that is cheapest by the inch. */
  private double costsAtLeast() {
    double had = onHand.stream().mapToDouble(this::room).sum();
    double wanted =
        rows.stream().mapToDouble(row -> row.count() * (row.lengths().get(0) + kerf)).sum();
    double cheapest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < stock.size(); i++) {
      double room = room(stock.get(i) * 12);
      cheapest = room > kerf ? Math.min(cheapest, prices.get(i) / room) : cheapest;
    }
    return Math.max(0, wanted - had) * cheapest;
  }

  /** What a stick has for pieces, each with a saw cut: the last needs none. */
  private double room(double length) {
    return length - 2 * trim + kerf;
  }

  private SolvedTable answered(StickPlan plan, Optional<String> nearMiss) {
    boolean isLabeled = rows.stream().anyMatch(row -> !row.label().isEmpty());
    List<List<String>> lines = new ArrayList<>();
    for (CutStick stick : longestFirst(plan)) {
      boolean isBought = stick.stock() < stock.size();
      double length = length(stick);
      List<Double> pieces = pieces(stick);
      List<String> line = new ArrayList<>();
      line.add(Shown.plain(isBought ? stock.get(stick.stock()) : length / 12));
      line.add(isBought ? money(dollars.units(prices.get(stick.stock()))) : "0.00");
      line.add(pieces.stream().map(Shown::plain).collect(joining("+")));
      line.add(Shown.plain(waste(length, pieces)));
      if (isLabeled) {
        line.add(labels(stick));
      }
      lines.add(line);
    }
    List<String> header = new ArrayList<>(List.of("stock_ft", "usd", "pieces", "waste_in"));
    if (isLabeled) {
      header.add("labels");
    }
    return new SolvedTable(
        header,
        lines,
        "total %s usd, at least %s, %s"
            .formatted(
                money(plan.cost()), money(plan.atLeast()), SolvedTable.standing(plan.isProven())),
        nearMiss,
        Set.of("pieces", "labels"));
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

  /** What each piece of a stick is for, in the order of the pieces. */
  private String labels(CutStick stick) {
    return stick.pieces().stream()
        .map(piece -> rows.get(piece).label())
        .map(label -> label.isEmpty() ? "-" : label)
        .collect(joining("+"));
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

  /** The order, the plan and what proves it: {@link StickProof} reads it. */
  private PlanTable proof(StickPlan plan) {
    Certificate certificate = plan.certificate();
    PlanTable table = new PlanTable(PlanTable.OF_STICKS);
    table.add(What.KERF, cell(PlanTable.LENGTH, Shown.plain(kerf)));
    table.add(What.TRIM, cell(PlanTable.LENGTH, Shown.plain(trim)));
    table.add(
        What.MONEY,
        cell(PlanTable.USD, Shown.plain(dollars.length(1))),
        cell(PlanTable.PARTS, String.valueOf(certificate.parts())));
    for (int k = 0; k < stock.size() + onHand.size(); k++) {
      boolean isBought = k < stock.size();
      table.add(
          What.STOCK,
          cell(
              PlanTable.LENGTH,
              Shown.plain(isBought ? stock.get(k) * 12 : onHand.get(k - stock.size()))),
          cell(PlanTable.USD, isBought ? Shown.plain(prices.get(k)) : "0"),
          cell(PlanTable.COUNT, isBought ? "" : "1"),
          cell(PlanTable.PARTS, String.valueOf(certificate.earning().get(k))));
    }
    for (int i = 0; i < rows.size(); i++) {
      table.add(
          What.PIECE,
          cell(PlanTable.LENGTH, Shown.plain(rows.get(i).lengths().get(0))),
          cell(PlanTable.COUNT, String.valueOf(rows.get(i).count())),
          cell(PlanTable.PARTS, String.valueOf(certificate.worth().get(i))));
    }
    for (CutStick stick : longestFirst(plan)) {
      table.add(
          What.STICK,
          cell(PlanTable.LENGTH, Shown.plain(length(stick))),
          cell(PlanTable.PIECES, pieces(stick).stream().map(Shown::plain).collect(joining("+"))));
    }
    table.add(What.LEAST, cell(PlanTable.USD, Shown.plain(dollars.length(certificate.atLeast()))));
    return table;
  }
}
