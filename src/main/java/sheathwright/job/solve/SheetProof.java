package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.program.Certificate;
import sheathwright.cutting.sheet.CutSheet;
import sheathwright.cutting.sheet.Offcut;
import sheathwright.cutting.sheet.PlacedPiece;
import sheathwright.cutting.sheet.SheetCertificateCheck;
import sheathwright.cutting.sheet.SheetOrder;
import sheathwright.cutting.sheet.SheetPart;
import sheathwright.cutting.sheet.SheetPiece;
import sheathwright.cutting.sheet.SheetPlan;
import sheathwright.cutting.sheet.SheetPlanCheck;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Shown;
import sheathwright.job.solve.PlanProof.Lines;
import sheathwright.job.solve.PlanTable.What;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;

/** A plan of sheets read back and checked: where pieces lie, and that none buys fewer sheets. */
final class SheetProof {

  private static final String NEW = "sheet ";
  private static final String ON_HAND = "offcut ";

  private final Lines lines;
  private final List<Row> pieces;
  private final List<Row> offcuts;
  private final CommonUnit inches;
  private final SheetOrder order;

  private SheetProof(Lines lines) {
    this.lines = lines;
    pieces = lines.of(What.PIECE);
    offcuts = lines.of(What.OFFCUT);
    Row sheet = lines.one(What.SHEET);
    double kerf = lines.number(lines.one(What.KERF), PlanTable.WIDTH);
    inches =
        CommonUnit.of(
            DoubleStream.concat(
                    DoubleStream.of(kerf),
                    Stream.concat(
                            Stream.of(sheet), Stream.concat(pieces.stream(), offcuts.stream()))
                        .flatMapToDouble(
                            row ->
                                DoubleStream.of(
                                    lines.number(row, PlanTable.WIDTH),
                                    lines.number(row, PlanTable.HEIGHT))))
                .toArray());
    order =
        new SheetOrder(
            side(sheet, PlanTable.WIDTH),
            side(sheet, PlanTable.HEIGHT),
            offcuts.stream()
                .map(row -> new Offcut(side(row, PlanTable.WIDTH), side(row, PlanTable.HEIGHT), 1))
                .toList(),
            pieces.stream()
                .map(
                    row ->
                        new SheetPiece(
                            side(row, PlanTable.WIDTH),
                            side(row, PlanTable.HEIGHT),
                            (int) lines.number(row, PlanTable.COUNT)))
                .toList(),
            inches.units(kerf));
  }

  static PlanProof of(Lines lines) {
    try {
      return new SheetProof(lines).checked();
    } catch (IllegalArgumentException outOfRange) {
      throw lines.refused(0, "", outOfRange.getMessage());
    }
  }

  private PlanProof checked() {
    Certificate certificate =
        new Certificate(
            lines.parts(lines.one(What.SHEET)),
            pieces.stream().map(lines::parts).toList(),
            offcuts.stream().map(lines::parts).toList(),
            (long) lines.number(lines.one(What.LEAST), PlanTable.COUNT));
    List<CutSheet> sheets = sheets();
    int bought = (int) sheets.stream().filter(CutSheet::isNew).count();
    SheetPlan plan = new SheetPlan(sheets, bought, Math.toIntExact(certificate.atLeast()));
    Optional<String> fault = SheetPlanCheck.fault(order, plan);
    return new PlanProof(
        Shown.counted(bought, "new sheet"),
        fault,
        Shown.counted(plan.atLeast(), "sheet"),
        SheetCertificateCheck.holds(order, certificate),
        plan.isProven());
  }

  /** The sheets with their pieces, offcuts first. */
  private List<CutSheet> sheets() {
    Map<String, List<PlacedPiece>> placed = new LinkedHashMap<>();
    int[] left = order.pieces().stream().mapToInt(SheetPiece::count).toArray();
    for (Row row : lines.of(What.PLACED)) {
      String on = row.read(PlanTable.ON).map(each -> each.value()).orElse("");
      placed.computeIfAbsent(on, none -> new ArrayList<>()).add(piece(row, left));
    }
    List<CutSheet> cut = new ArrayList<>();
    placed.forEach(
        (on, laid) -> cut.add(new CutSheet(offcut(on), laid, List.of(), SheetPart.NONE)));
    return cut;
  }

  private int offcut(String on) {
    if (on.startsWith(NEW)) {
      return CutSheet.NEW;
    }
    for (int i = 0; i < offcuts.size(); i++) {
      if (on.equals(ON_HAND + (i + 1))) {
        return i;
      }
    }
    throw lines.refused(
        0,
        PlanTable.ON.name(),
        "\"%s\" is neither sheet 1 nor an offcut of its lines".formatted(on));
  }

  private PlacedPiece piece(Row row, int[] left) {
    long width = side(row, PlanTable.WIDTH);
    long height = side(row, PlanTable.HEIGHT);
    int found = -1;
    for (int i = 0; i < left.length && (found < 0 || left[found] == 0); i++) {
      SheetPiece each = order.pieces().get(i);
      found = each.width() == width && each.height() == height ? i : found;
    }
    if (found < 0) {
      throw lines.refused(
          row.line().number(), PlanTable.WIDTH.name(), "no piece of this size is wanted above");
    }
    left[found]--;
    return new PlacedPiece(found, side(row, PlanTable.X), side(row, PlanTable.Y), width, height);
  }

  private long side(Row row, Field<Figure<Length>> column) {
    return inches.units(lines.number(row, column));
  }
}
