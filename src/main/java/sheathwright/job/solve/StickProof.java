package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.program.Certificate;
import sheathwright.cutting.stick.CutStick;
import sheathwright.cutting.stick.StickCertificateCheck;
import sheathwright.cutting.stick.StickOrder;
import sheathwright.cutting.stick.StickPiece;
import sheathwright.cutting.stick.StickPlan;
import sheathwright.cutting.stick.StickPlanCheck;
import sheathwright.cutting.stick.StockLength;
import sheathwright.figure.Shown;
import sheathwright.job.solve.PlanProof.Lines;
import sheathwright.job.solve.PlanTable.What;
import sheathwright.job.table.Row;

/** A plan of sticks read back and checked: what is cut, what it costs, and that none costs less. */
final class StickProof {

  private final Lines lines;
  private final List<Row> stock;
  private final List<Row> pieces;
  private final CommonUnit inches;
  private final double money;
  private final StickOrder order;

  private StickProof(Lines lines) {
    this.lines = lines;
    stock = lines.of(What.STOCK);
    pieces = lines.of(What.PIECE);
    money = lines.number(lines.one(What.MONEY), PlanTable.USD);
    double kerf = length(lines.one(What.KERF));
    double trim = length(lines.one(What.TRIM));
    inches =
        CommonUnit.of(
            DoubleStream.concat(
                    DoubleStream.of(kerf, trim),
                    DoubleStream.concat(
                        stock.stream().mapToDouble(this::length),
                        pieces.stream().mapToDouble(this::length)))
                .toArray());
    order =
        new StickOrder(
            stock.stream()
                .map(
                    row ->
                        new StockLength(
                            inches.units(length(row)),
                            units(row),
                            row.has(PlanTable.COUNT) ? count(row) : StockLength.ANY))
                .toList(),
            pieces.stream()
                .map(row -> new StickPiece(inches.units(length(row)), count(row)))
                .toList(),
            inches.units(kerf),
            inches.units(trim));
  }

  static PlanProof of(Lines lines) {
    return new StickProof(lines).checked();
  }

  private PlanProof checked() {
    List<CutStick> sticks = new ArrayList<>();
    int[] left = order.pieces().stream().mapToInt(StickPiece::count).toArray();
    int[] taken = new int[stock.size()];
    for (Row row : lines.of(What.STICK)) {
      sticks.add(stick(row, left, taken));
    }
    long cost = sticks.stream().mapToLong(stick -> order.stock().get(stick.stock()).price()).sum();
    Row least = lines.one(What.LEAST);
    Certificate certificate =
        new Certificate(
            lines.parts(lines.one(What.MONEY)),
            pieces.stream().map(lines::parts).toList(),
            stock.stream().map(lines::parts).toList(),
            units(least));
    StickPlan plan = new StickPlan(sticks, cost, certificate.atLeast(), certificate);
    Optional<String> fault = StickPlanCheck.fault(order, plan);
    return new PlanProof(
        "%s, %s usd".formatted(Shown.counted(sticks.size(), "stick"), usd(cost)),
        fault,
        usd(certificate.atLeast()) + " usd",
        StickCertificateCheck.holds(order, certificate),
        plan.isProven());
  }

  /** The pieces of one stick, each the first of its length that is still wanted. */
  private CutStick stick(Row row, int[] left, int[] taken) {
    long length = inches.units(length(row));
    int from = -1;
    for (int k = 0; k < stock.size() && from < 0; k++) {
      StockLength each = order.stock().get(k);
      from = each.length() == length && taken[k] < each.available() ? k : -1;
    }
    if (from < 0) {
      throw lines.refused(
          row.line().number(),
          PlanTable.LENGTH.name(),
          "no stock of this length is left in the lines above");
    }
    taken[from]++;
    String cut = row.read(PlanTable.PIECES).map(each -> each.value()).orElse("");
    return new CutStick(
        from, Arrays.stream(cut.split("\\+")).map(each -> piece(row, each.strip(), left)).toList());
  }

  private int piece(Row row, String typed, int[] left) {
    double length;
    try {
      length = Double.parseDouble(typed);
    } catch (NumberFormatException noNumber) {
      throw lines.refused(
          row.line().number(),
          PlanTable.PIECES.name(),
          "\"%s\" is no length; write 22.5+22.5".formatted(typed));
    }
    int found = -1;
    for (int i = 0; i < left.length && (found < 0 || left[found] == 0); i++) {
      found = Math.abs(length(pieces.get(i)) - length) < 1e-6 ? i : found;
    }
    if (found < 0) {
      throw lines.refused(
          row.line().number(),
          PlanTable.PIECES.name(),
          "%s in is no piece of the lines above".formatted(typed));
    }
    left[found]--;
    return found;
  }

  private double length(Row row) {
    return lines.number(row, PlanTable.LENGTH);
  }

  private int count(Row row) {
    return (int) lines.number(row, PlanTable.COUNT);
  }

  private long units(Row row) {
    double units = money == 0 ? 0 : lines.number(row, PlanTable.USD) / money;
    if (Math.abs(units - Math.rint(units)) > 1e-6) {
      throw lines.refused(
          row.line().number(),
          PlanTable.USD.name(),
          "it is no whole number of the %s usd that the line money says"
              .formatted(Shown.plain(money)));
    }
    return Math.round(units);
  }

  private String usd(long units) {
    return "%,.2f".formatted(units * money);
  }
}
