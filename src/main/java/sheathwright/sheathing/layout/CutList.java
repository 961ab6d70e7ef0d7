package sheathwright.sheathing.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.Patience;
import sheathwright.cutting.sheet.CutSheet;
import sheathwright.cutting.sheet.PlacedPiece;
import sheathwright.cutting.sheet.SheetCutting;
import sheathwright.cutting.sheet.SheetPlan;
import sheathwright.figure.Lengths;

/**
 * Pieces laid out on sheets, in inches: straight cuts from edge to edge, no piece turned out of its
 * strength axis.
 *
 * @param pieces each with the sheet it is cut from; offcuts on hand first
 * @param sheets new sheets to buy
 * @param atLeast no plan of such cuts buys fewer
 * @param cuts saw cuts in all
 */
public record CutList(List<Placed> pieces, int sheets, int atLeast, int cuts) {

  private static final int SIXTEENTHS = 16;
  private static final double DUST = 1e-6;

  /**
   * One piece where it lies.
   *
   * @param sheet counted from 1, offcuts and new sheets each by themselves
   * @param isOffcut whether it comes out of an offcut on hand
   * @param x inches from the sheet's left edge
   * @param y inches from its lower edge
   * @param piece what is cut
   */
  public record Placed(int sheet, boolean isOffcut, double x, double y, CutPiece piece) {}

  /** Whether no plan buys fewer sheets. */
  public boolean isProven() {
    return sheets == atLeast;
  }

  /** The same plan beside another bound. */
  CutList boundedBy(int fewest) {
    return new CutList(pieces, sheets, fewest, cuts);
  }

  /**
   * The best plan found.
   *
   * @param sheet what is bought
   * @param onHand offcuts, used before a sheet is bought
   * @param kerf inches of saw cut between neighbors
   * @throws sheathwright.cutting.CannotBeCutException if a piece fits no sheet without being turned
   */
  public static CutList of(
      StockSheet sheet,
      List<StockSheet> onHand,
      double kerf,
      List<CutPiece> pieces,
      Patience patience) {
    CutOrder order = CutOrder.of(sheet, onHand, kerf, pieces);
    return of(order, pieces, SheetCutting.plan(order.order(), patience));
  }

  /** A plan of whole numbers, in inches. */
  public static CutList of(CutOrder order, List<CutPiece> pieces, SheetPlan plan) {
    CommonUnit unit = order.unit();
    List<Placed> placed = new ArrayList<>();
    int bought = 0;
    int taken = 0;
    for (CutSheet cut : plan.sheets()) {
      int number = cut.isNew() ? ++bought : ++taken;
      for (PlacedPiece piece : cut.pieces()) {
        placed.add(
            new Placed(
                number,
                !cut.isNew(),
                unit.length(piece.x()),
                unit.length(piece.y()),
                pieces.get(piece.piece())));
      }
    }
    return new CutList(placed, plan.newSheets(), plan.atLeast(), plan.cuts());
  }

  /** Sheet by sheet what is cut out of it, as the crew's tape has it. */
  @Override
  public String toString() {
    Map<String, List<String>> bySheet = new LinkedHashMap<>();
    for (Placed each : pieces) {
      bySheet
          .computeIfAbsent(
              (each.isOffcut() ? "offcut " : "sheet ") + each.sheet(), sheet -> new ArrayList<>())
          .add(
              "%s %s by %s"
                  .formatted(
                      each.piece().label(), cut(each.piece().width()), cut(each.piece().height())));
    }
    List<String> lines = new ArrayList<>();
    bySheet.forEach((sheet, cut) -> lines.add(sheet + ": " + String.join(", ", cut)));
    lines.add(
        "%s, %s; inches, a piece between two sixteenths rounded down"
            .formatted(counted(sheets, "sheet"), counted(cuts, "cut")));
    return String.join("\n", lines);
  }

  private static String cut(double inches) {
    return Lengths.inInches(Math.floor(inches * SIXTEENTHS + DUST) / SIXTEENTHS);
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
