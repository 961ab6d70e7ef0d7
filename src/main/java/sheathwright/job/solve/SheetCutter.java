package sheathwright.job.solve;

import static sheathwright.job.solve.PlanTable.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;
import sheathwright.cutting.sheet.CutSheet;
import sheathwright.cutting.sheet.PlacedPiece;
import sheathwright.cutting.sheet.SheetCutting;
import sheathwright.cutting.sheet.SheetOrder;
import sheathwright.cutting.sheet.SheetPlan;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.solve.PlanTable.What;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.sheathing.layout.CutList;
import sheathwright.sheathing.layout.CutOrder;
import sheathwright.sheathing.layout.CutPiece;
import sheathwright.sheathing.layout.StockSheet;

/** A list of pieces cut out of sheets: a line for each piece, with its sheet and where it lies. */
final class SheetCutter {

  private static final List<Field<Figure<Length>>> SIDES =
      List.of(PieceRows.length("width_in", "Width"), PieceRows.length("height_in", "Height"));

  private static final SolverOption<Figure<Length>> SHEET_WIDTH =
      new SolverOption<>(side("sheet_width_in", "Sheet width"), "96");
  private static final SolverOption<Figure<Length>> SHEET_HEIGHT =
      new SolverOption<>(side("sheet_height_in", "Sheet height"), "48");
  private static final SolverOption<Figure<Length>> ON_HAND =
      new SolverOption<>(side("on_hand_in", "Offcuts on hand"), "");

  static final List<SolverOption<?>> OPTIONS =
      List.of(
          SHEET_WIDTH,
          SHEET_HEIGHT,
          SolverOptions.KERF,
          ON_HAND,
          SolverOptions.SECONDS,
          SolverOptions.CERTIFICATE);

  private SheetCutter() {}

  private static Field<Figure<Length>> side(String name, String label) {
    return Field.number(name, label, Units.INCH, 1, 1_000);
  }

  static SolvedTable cut(CsvFile file, SolverOptions options, Patience patience) {
    StockSheet sheet = new StockSheet(options.number(SHEET_WIDTH), options.number(SHEET_HEIGHT));
    double kerf = options.number(SolverOptions.KERF);
    List<StockSheet> onHand =
        options.rectangles(ON_HAND).stream()
            .map(sides -> new StockSheet(sides[0], sides[1]))
            .toList();
    List<PieceRows.Alike> rows = PieceRows.of(file, SIDES);
    List<CutPiece> pieces = pieces(rows);
    try {
      CutOrder order = CutOrder.of(sheet, onHand, kerf, pieces);
      SheetPlan found = SheetCutting.plan(order.order(), patience);
      CutList plan = CutList.of(order, pieces, found);
      SolvedTable answer = answered(plan, nearMiss(plan, sheet, onHand, kerf, rows, patience));
      Optional<String> proven = options.textIfGiven(SolverOptions.CERTIFICATE);
      if (proven.isEmpty()) {
        return answer;
      }
      PlanTable proof = proof(order, found, patience);
      return answer.beside(proven, proof.headings(), proof.lines());
    } catch (CannotBeCutException tooLarge) {
      throw PieceRows.cannotBeCut(
          file,
          rows.get(tooLarge.piece()),
          "no sheet of %s by %s in takes %s by %s in without turning its strength axis"
              .formatted(
                  Shown.plain(sheet.width()),
                  Shown.plain(sheet.height()),
                  Shown.plain(pieces.get(tooLarge.piece()).width()),
                  Shown.plain(pieces.get(tooLarge.piece()).height())));
    }
  }

  private static List<CutPiece> pieces(List<PieceRows.Alike> rows) {
    return rows.stream()
        .map(
            row ->
                new CutPiece(row.label(), row.lengths().get(0), row.lengths().get(1), row.count()))
        .toList();
  }

  /** What a little less on each piece would save; only asked where the area leaves room for it. */
  private static Optional<String> nearMiss(
      CutList plan,
      StockSheet sheet,
      List<StockSheet> onHand,
      double kerf,
      List<PieceRows.Alike> rows,
      Patience patience) {
    if (patience.isSpent() || !NearMiss.isPossible(kerf, rows)) {
      return Optional.empty();
    }
    List<CutPiece> less = pieces(NearMiss.less(kerf, rows));
    double wanted =
        less.stream()
            .mapToDouble(piece -> piece.count() * area(piece.width(), piece.height(), kerf))
            .sum();
    double had = onHand.stream().mapToDouble(each -> area(each.width(), each.height(), kerf)).sum();
    double fewer = (plan.sheets() - 1) * area(sheet.width(), sheet.height(), kerf);
    if (wanted > had + fewer) {
      return Optional.empty();
    }
    try {
      int sheets = CutList.of(sheet, onHand, kerf, less, patience).sheets();
      String saved = sheets + (sheets == 1 ? " sheet" : " sheets");
      return sheets < plan.sheets()
          ? Optional.of(NearMiss.inWords(kerf, "less each way", saved))
          : Optional.empty();
    } catch (CannotBeCutException noneFound) {
      return Optional.empty();
    }
  }

  /** The area that a piece takes with the saw cuts beside it; of a sheet, what it has for them. */
  private static double area(double width, double height, double kerf) {
    return (width + kerf) * (height + kerf);
  }

  private static SolvedTable answered(CutList plan, Optional<String> nearMiss) {
    List<List<String>> lines = new ArrayList<>();
    for (CutList.Placed placed : plan.pieces()) {
      lines.add(
          List.of(
              (placed.isOffcut() ? "on-hand-" : "") + placed.sheet(),
              Shown.plain(placed.x()),
              Shown.plain(placed.y()),
              Shown.plain(placed.piece().width()),
              Shown.plain(placed.piece().height()),
              placed.piece().label()));
    }
    return new SolvedTable(
        List.of("sheet", "x_in", "y_in", "width_in", "height_in", "label"),
        lines,
        "sheets %s, at least %s, %s"
            .formatted(plan.sheets(), plan.atLeast(), SolvedTable.standing(plan.isProven())),
        nearMiss,
        Set.of("sheet", "label"));
  }

  /** The order, the plan and what proves it: {@link SheetProof} reads it. */
  private static PlanTable proof(CutOrder inches, SheetPlan plan, Patience patience) {
    SheetOrder order = inches.order();
    Certificate certificate = SheetCutting.certificate(order, plan.newSheets(), patience);
    Function<Long, String> plain = units -> Shown.plain(inches.unit().length(units));
    PlanTable table = new PlanTable(PlanTable.OF_SHEETS);
    table.add(What.KERF, cell(PlanTable.WIDTH, plain.apply(order.kerf())));
    table.add(
        What.SHEET,
        cell(PlanTable.WIDTH, plain.apply(order.sheetWidth())),
        cell(PlanTable.HEIGHT, plain.apply(order.sheetHeight())),
        cell(PlanTable.PARTS, String.valueOf(certificate.parts())));
    for (int i = 0; i < order.offcuts().size(); i++) {
      table.add(
          What.OFFCUT,
          cell(PlanTable.WIDTH, plain.apply(order.offcuts().get(i).width())),
          cell(PlanTable.HEIGHT, plain.apply(order.offcuts().get(i).height())),
          cell(PlanTable.PARTS, String.valueOf(certificate.earning().get(i))));
    }
    for (int i = 0; i < order.pieces().size(); i++) {
      table.add(
          What.PIECE,
          cell(PlanTable.WIDTH, plain.apply(order.pieces().get(i).width())),
          cell(PlanTable.HEIGHT, plain.apply(order.pieces().get(i).height())),
          cell(PlanTable.COUNT, String.valueOf(order.pieces().get(i).count())),
          cell(PlanTable.PARTS, String.valueOf(certificate.worth().get(i))));
    }
    int bought = 0;
    for (CutSheet sheet : plan.sheets()) {
      String on = sheet.isNew() ? "sheet " + ++bought : "offcut " + (sheet.offcut() + 1);
      for (PlacedPiece piece : sheet.pieces()) {
        table.add(
            What.PLACED,
            cell(PlanTable.WIDTH, plain.apply(piece.width())),
            cell(PlanTable.HEIGHT, plain.apply(piece.height())),
            cell(PlanTable.ON, on),
            cell(PlanTable.X, plain.apply(piece.x())),
            cell(PlanTable.Y, plain.apply(piece.y())));
      }
    }
    table.add(What.LEAST, cell(PlanTable.COUNT, String.valueOf(certificate.atLeast())));
    return table;
  }
}
