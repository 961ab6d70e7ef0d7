package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToLongFunction;
import sheathwright.cutting.program.WrongPlanException;

/**
 * Checks a plan against its order, without any of the code that made it: every piece is there once
 * for each copy wanted, inside its sheet and a kerf from its neighbors; the sheet can be parted
 * into its pieces by guillotine cuts; and the cuts that the plan names do it.
 */
public final class SheetPlanCheck {

  private SheetPlanCheck() {}

  /**
   * @throws IllegalStateException if the plan is wrong
   */
  static void check(SheetOrder order, SheetPlan plan) {
    try {
      checkPieces(order, plan);
      for (CutSheet sheet : plan.sheets()) {
        checkCuts(whole(order, sheet), sheet, order.kerf());
      }
    } catch (WrongPlanException wrong) {
      throw new IllegalStateException(
          "The cutting plan is wrong: " + wrong.getMessage() + ".", wrong);
    }
  }

  /**
   * What is wrong with where a plan lays its pieces; empty if guillotine cuts free every piece that
   * the order wants out of so many sheets. The cuts that the plan names are not looked at.
   */
  public static Optional<String> fault(SheetOrder order, SheetPlan plan) {
    try {
      checkPieces(order, plan);
      return Optional.empty();
    } catch (WrongPlanException wrong) {
      return Optional.of(wrong.getMessage());
    }
  }

  private static SheetPart whole(SheetOrder order, CutSheet sheet) {
    if (sheet.isNew()) {
      return new SheetPart(0, 0, order.sheetWidth(), order.sheetHeight());
    }
    Offcut offcut = order.offcuts().get(sheet.offcut());
    return new SheetPart(0, 0, offcut.width(), offcut.height());
  }

  private static void checkPieces(SheetOrder order, SheetPlan plan) {
    int[] pieces = new int[order.pieces().size()];
    int[] offcuts = new int[order.offcuts().size()];
    int bought = 0;
    for (CutSheet sheet : plan.sheets()) {
      if (sheet.isNew()) {
        bought++;
      } else {
        int count = order.offcuts().get(sheet.offcut()).count();
        require(++offcuts[sheet.offcut()] <= count, "an offcut is used too often");
        require(bought == 0, "an offcut comes after a new sheet");
      }
      require(!sheet.pieces().isEmpty(), "a sheet without pieces");
      for (PlacedPiece placed : sheet.pieces()) {
        pieces[placed.piece()]++;
        SheetPiece wanted = order.pieces().get(placed.piece());
        require(
            placed.width() == wanted.width() && placed.height() == wanted.height(),
            "a piece of another size");
      }
      checkPlaces(whole(order, sheet), sheet.pieces(), order.kerf());
      require(isGuillotine(sheet.pieces(), order.kerf()), "no guillotine cuts part the pieces");
    }
    for (int piece = 0; piece < pieces.length; piece++) {
      require(pieces[piece] == order.pieces().get(piece).count(), "a piece too many or too few");
    }
    require(bought == plan.newSheets(), "new sheets are counted wrongly");
    require(plan.atLeast() <= bought, "the bound is above the plan");
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new WrongPlanException(otherwise);
    }
  }

  private static void checkPlaces(SheetPart whole, List<PlacedPiece> pieces, long kerf) {
    for (int at = 0; at < pieces.size(); at++) {
      PlacedPiece one = pieces.get(at);
      require(
          one.x() >= 0
              && one.y() >= 0
              && one.x() + one.width() <= whole.width()
              && one.y() + one.height() <= whole.height(),
          "a piece reaches over the edge");
      for (PlacedPiece other : pieces.subList(at + 1, pieces.size())) {
        require(
            one.x() + one.width() + kerf <= other.x()
                || other.x() + other.width() + kerf <= one.x()
                || one.y() + one.height() + kerf <= other.y()
                || other.y() + other.height() + kerf <= one.y(),
            "two pieces are nearer than the kerf");
      }
    }
  }

  /** Parts at the first gap found; a guillotine cut that is possible can always be made first. */
  private static boolean isGuillotine(List<PlacedPiece> pieces, long kerf) {
    if (pieces.size() == 1) {
      return true;
    }
    for (boolean across : new boolean[] {true, false}) {
      ToLongFunction<PlacedPiece> start = across ? PlacedPiece::x : PlacedPiece::y;
      List<PlacedPiece> sorted = pieces.stream().sorted(Comparator.comparingLong(start)).toList();
      long reached = Long.MIN_VALUE;
      for (int at = 0; at < sorted.size(); at++) {
        PlacedPiece piece = sorted.get(at);
        if (at > 0 && start.applyAsLong(piece) >= reached + kerf) {
          return isGuillotine(sorted.subList(0, at), kerf)
              && isGuillotine(sorted.subList(at, sorted.size()), kerf);
        }
        long end = start.applyAsLong(piece) + (across ? piece.width() : piece.height());
        reached = Math.max(reached, end);
      }
    }
    return false;
  }

  private static void checkCuts(SheetPart whole, CutSheet sheet, long kerf) {
    Set<SheetPart> parts = new HashSet<>();
    parts.add(whole);
    for (SheetCut cut : sheet.cuts()) {
      SheetPart part = cut.part();
      require(parts.remove(part), "a cut through a part that is not there");
      boolean across = cut.direction() == SheetCut.Direction.ACROSS;
      long length = across ? part.width() : part.height();
      require(cut.at() > 0 && cut.at() < length, "a cut outside its part");
      long from = cut.at() + kerf;
      parts.add(
          across
              ? new SheetPart(part.x(), part.y(), cut.at(), part.height())
              : new SheetPart(part.x(), part.y(), part.width(), cut.at()));
      if (from < length) {
        parts.add(
            across
                ? new SheetPart(part.x() + from, part.y(), length - from, part.height())
                : new SheetPart(part.x(), part.y() + from, part.width(), length - from));
      }
    }
    for (PlacedPiece piece : sheet.pieces()) {
      require(
          parts.remove(new SheetPart(piece.x(), piece.y(), piece.width(), piece.height())),
          "the cuts do not free a piece");
    }
    List<SheetPart> left = new ArrayList<>(parts);
    long largest = left.stream().mapToLong(SheetPart::area).max().orElse(0);
    boolean isLeft = sheet.rest().equals(SheetPart.NONE) || parts.contains(sheet.rest());
    require(isLeft && sheet.rest().area() == largest, "the rest is not the largest part left over");
  }
}
