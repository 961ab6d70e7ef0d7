package sheathwright.cutting.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The fewest new sheets by trying every cut at every unit and every way to part the pieces. For a
 * handful of pieces on a sheet of a few units; shares no code and no idea with the search.
 */
final class GuillotineBruteForce {

  private record Part(int width, int height, int pieces) {}

  private final List<SheetPiece> singles;
  private final int kerf;
  private final Map<Part, Boolean> known = new HashMap<>();

  private GuillotineBruteForce(SheetOrder order) {
    singles =
        order.pieces().stream()
            .flatMap(piece -> IntStream.range(0, piece.count()).mapToObj(copy -> piece))
            .toList();
    kerf = (int) order.kerf();
  }

  static int fewestSheets(SheetOrder order) {
    GuillotineBruteForce search = new GuillotineBruteForce(order);
    int all = (1 << search.singles.size()) - 1;
    boolean[] reached = new boolean[all + 1];
    reached[0] = true;
    for (Offcut offcut : order.offcuts()) {
      for (int copy = 0; copy < offcut.count(); copy++) {
        reached = search.withOneMore(reached, (int) offcut.width(), (int) offcut.height());
      }
    }
    int sheets = 0;
    while (!reached[all]) {
      reached = search.withOneMore(reached, (int) order.sheetWidth(), (int) order.sheetHeight());
      sheets++;
    }
    return sheets;
  }

  private boolean[] withOneMore(boolean[] reached, int width, int height) {
    boolean[] more = new boolean[reached.length];
    for (int done = 0; done < reached.length; done++) {
      int left = (reached.length - 1) & ~done;
      for (int taken = left; reached[done]; taken = (taken - 1) & left) {
        if (!more[done | taken] && fits(new Part(width, height, taken))) {
          more[done | taken] = true;
        }
        if (taken == 0) {
          break;
        }
      }
    }
    return more;
  }

  private boolean fits(Part part) {
    if (part.pieces() == 0) {
      return true;
    }
    if (part.width() <= 0 || part.height() <= 0) {
      return false;
    }
    Boolean before = known.get(part);
    if (before == null) {
      before = isSingleFitting(part) || isPartedAcross(part) || isPartedAlong(part);
      known.put(part, before);
    }
    return before;
  }

  private boolean isSingleFitting(Part part) {
    if (Integer.bitCount(part.pieces()) > 1) {
      return false;
    }
    SheetPiece piece = singles.get(Integer.numberOfTrailingZeros(part.pieces()));
    return piece.width() <= part.width() && piece.height() <= part.height();
  }

  private boolean isPartedAcross(Part part) {
    for (int cut = 1; cut < part.width(); cut++) {
      for (int near = part.pieces(); near > 0; near = (near - 1) & part.pieces()) {
        if (near != part.pieces()
            && fits(new Part(cut, part.height(), near))
            && fits(new Part(part.width() - cut - kerf, part.height(), part.pieces() & ~near))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isPartedAlong(Part part) {
    for (int cut = 1; cut < part.height(); cut++) {
      for (int near = part.pieces(); near > 0; near = (near - 1) & part.pieces()) {
        if (near != part.pieces()
            && fits(new Part(part.width(), cut, near))
            && fits(new Part(part.width(), part.height() - cut - kerf, part.pieces() & ~near))) {
          return true;
        }
      }
    }
    return false;
  }
}
