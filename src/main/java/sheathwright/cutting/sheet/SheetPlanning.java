package sheathwright.cutting.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Turns packed sheets into a plan in the order's own pieces, offcuts and lengths, with its cuts.
 */
final class SheetPlanning {

  /**
   * The best order of cuts is sought for so many pieces. SmallPatchesWork: 1,030 cuts, and the
   * largest rests of 30 orders come to 15.55 sheets; half 1,032 and 15.51, 0.97 of the turns;
   * double 1,029 and 15.55, 1.34; 6 gave 1,030 and 15.51.
   */
  private static final int FEW_PIECES = 9;

  private final SheetOrder order;
  private final SheetTask task;
  private final List<Deque<Integer>> pieces = new ArrayList<>();
  private final List<Deque<Integer>> offcuts = new ArrayList<>();

  SheetPlanning(SheetOrder order, SheetTask task) {
    this.order = order;
    this.task = task;
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      pieces.add(new ArrayDeque<>(task.piecesOfKind(kind)));
    }
    task.stocks().forEach(stock -> offcuts.add(new ArrayDeque<>(stock.offcuts())));
  }

  SheetPlan plan(List<PackedSheet> packed, int atLeast) {
    List<PackedSheet> inOrder =
        packed.stream()
            .sorted(
                Comparator.comparing((PackedSheet sheet) -> sheet.stock() == SheetTask.NEW)
                    .thenComparingInt(PackedSheet::stock)
                    .thenComparingDouble(sheet -> -sheet.filled()))
            .toList();
    List<CutSheet> sheets = new ArrayList<>();
    for (int at = 0; at < inOrder.size(); at++) {
      PackedSheet sheet = inOrder.get(at);
      boolean last = at == inOrder.size() - 1 && sheet.stock() == SheetTask.NEW;
      sheets.add(cut(last ? RestOfSheet.largest(task, order.kerf(), sheet) : sheet, last));
    }
    int bought = (int) sheets.stream().filter(CutSheet::isNew).count();
    return new SheetPlan(sheets, bought, atLeast);
  }

  private CutSheet cut(PackedSheet sheet, boolean last) {
    SheetTask.Stock stock = task.stocks().get(sheet.stock());
    List<PlacedPiece> placed = new ArrayList<>();
    for (PlacedPiece piece : placed(task, order.kerf(), sheet)) {
      placed.add(
          new PlacedPiece(
              pieces.get(piece.piece()).pop(),
              piece.x(),
              piece.y(),
              piece.width(),
              piece.height()));
    }
    SheetSawing.Sawn sawn =
        new SheetSawing(order.kerf(), last, FEW_PIECES).saw(whole(stock, order.kerf()), placed);
    int offcut = sheet.stock() == SheetTask.NEW ? CutSheet.NEW : offcuts.get(sheet.stock()).pop();
    return new CutSheet(offcut, sawn.pieces(), sawn.cuts(), sawn.rest());
  }

  static SheetPart whole(SheetTask.Stock stock, long kerf) {
    return new SheetPart(0, 0, stock.width() - kerf, stock.height() - kerf);
  }

  /** The pieces without their kerf; each is named by its kind. */
  static List<PlacedPiece> placed(SheetTask task, long kerf, PackedSheet sheet) {
    List<PlacedPiece> placed = new ArrayList<>();
    for (int piece = 0; piece < sheet.pieces(); piece++) {
      SheetTask.Kind kind = task.kinds().get(sheet.kind(piece));
      placed.add(
          new PlacedPiece(
              sheet.kind(piece),
              sheet.x(piece),
              sheet.y(piece),
              kind.width() - kerf,
              kind.height() - kerf));
    }
    return placed;
  }
}
