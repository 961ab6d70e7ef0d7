package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * In which order to saw pieces out of a sheet. Pieces are moved left and down to the edges of their
 * part; no piece crosses a cut. Of the possible orders, that with the fewest cuts is taken, or that
 * which leaves the largest rest.
 */
final class SheetSawing {

  /** A way to saw a part. */
  record Sawn(List<PlacedPiece> pieces, List<SheetCut> cuts, SheetPart rest) {}

  private final long kerf;
  private final int fewPieces;
  private final Comparator<Sawn> better;

  /**
   * @param restFirst whether a larger rest counts for more than fewer cuts
   * @param fewPieces parts with more pieces are sawn by the cut that trims most, or else halves
   *     them best, not by the best order of cuts
   */
  SheetSawing(long kerf, boolean restFirst, int fewPieces) {
    this.kerf = kerf;
    this.fewPieces = fewPieces;
    Comparator<Sawn> byRest = Comparator.comparingLong(sawn -> -sawn.rest().area());
    Comparator<Sawn> byCuts = Comparator.comparingInt(sawn -> sawn.cuts().size());
    better = restFirst ? byRest.thenComparing(byCuts) : byCuts.thenComparing(byRest);
  }

  /**
   * Saws all pieces out of a part.
   *
   * @throws IllegalStateException if no guillotine cuts do
   */
  Sawn saw(SheetPart part, List<PlacedPiece> pieces) {
    if (pieces.isEmpty()) {
      return new Sawn(List.of(), List.of(), part);
    }
    List<PlacedPiece> moved = toCorner(part, pieces);
    PlacedPiece first = moved.get(0);
    if (moved.size() == 1 && first.width() == part.width() && first.height() == part.height()) {
      return new Sawn(moved, List.of(), SheetPart.NONE);
    }
    List<SheetCut> cuts =
        Stream.of(SheetCut.Direction.values())
            .flatMap(direction -> cuts(part, direction, moved).stream())
            .toList();
    Stream<SheetCut> tried =
        moved.size() <= fewPieces
            ? cuts.stream()
            : cuts.stream().min(trimmingOrHalving(moved)).stream();
    return tried
        .map(cut -> sawn(cut, moved))
        .min(better)
        .orElseThrow(() -> new IllegalStateException("pieces without a guillotine cut"));
  }

  private static List<PlacedPiece> toCorner(SheetPart part, List<PlacedPiece> pieces) {
    long left = pieces.stream().mapToLong(PlacedPiece::x).min().orElse(part.x()) - part.x();
    long low = pieces.stream().mapToLong(PlacedPiece::y).min().orElse(part.y()) - part.y();
    return pieces.stream()
        .map(
            piece ->
                new PlacedPiece(
                    piece.piece(),
                    piece.x() - left,
                    piece.y() - low,
                    piece.width(),
                    piece.height()))
        .toList();
  }

  private static boolean isAcross(SheetCut.Direction direction) {
    return direction == SheetCut.Direction.ACROSS;
  }

  private static long start(PlacedPiece piece, SheetCut.Direction direction) {
    return isAcross(direction) ? piece.x() : piece.y();
  }

  private static long end(PlacedPiece piece, SheetCut.Direction direction) {
    return isAcross(direction) ? piece.x() + piece.width() : piece.y() + piece.height();
  }

  /** Every cut at the end of a piece that crosses none. */
  private List<SheetCut> cuts(
      SheetPart part, SheetCut.Direction direction, List<PlacedPiece> pieces) {
    long origin = isAcross(direction) ? part.x() : part.y();
    long length = isAcross(direction) ? part.width() : part.height();
    return pieces.stream()
        .mapToLong(piece -> end(piece, direction))
        .distinct()
        .filter(at -> at < origin + length)
        .filter(
            at ->
                pieces.stream()
                    .allMatch(
                        piece ->
                            end(piece, direction) <= at || start(piece, direction) >= at + kerf))
        .mapToObj(at -> new SheetCut(part, direction, at - origin))
        .toList();
  }

  private static SheetPart before(SheetCut cut) {
    SheetPart part = cut.part();
    return isAcross(cut.direction())
        ? new SheetPart(part.x(), part.y(), cut.at(), part.height())
        : new SheetPart(part.x(), part.y(), part.width(), cut.at());
  }

  private SheetPart beyond(SheetCut cut) {
    SheetPart part = cut.part();
    long from = cut.at() + kerf;
    return isAcross(cut.direction())
        ? new SheetPart(part.x() + from, part.y(), Math.max(0, part.width() - from), part.height())
        : new SheetPart(part.x(), part.y() + from, part.width(), Math.max(0, part.height() - from));
  }

  private Comparator<SheetCut> trimmingOrHalving(List<PlacedPiece> pieces) {
    return Comparator.comparingLong((SheetCut cut) -> -trimmed(cut, pieces))
        .thenComparingLong(
            cut ->
                Math.abs(
                    2 * pieces.stream().filter(piece -> isNear(cut, piece)).count()
                        - pieces.size()));
  }

  private static boolean isNear(SheetCut cut, PlacedPiece piece) {
    SheetPart part = cut.part();
    long from = isAcross(cut.direction()) ? part.x() : part.y();
    return end(piece, cut.direction()) <= from + cut.at();
  }

  /** Area without pieces that a cut leaves beyond it. */
  private long trimmed(SheetCut cut, List<PlacedPiece> pieces) {
    boolean empty = pieces.stream().allMatch(piece -> isNear(cut, piece));
    return empty ? beyond(cut).area() : 0;
  }

  private Sawn sawn(SheetCut cut, List<PlacedPiece> pieces) {
    Map<Boolean, List<PlacedPiece>> parted =
        pieces.stream().collect(Collectors.partitioningBy(piece -> isNear(cut, piece)));
    Sawn first = saw(before(cut), parted.get(true));
    Sawn second = saw(beyond(cut), parted.get(false));
    List<PlacedPiece> all = new ArrayList<>(first.pieces());
    all.addAll(second.pieces());
    List<SheetCut> cuts = new ArrayList<>();
    cuts.add(cut);
    cuts.addAll(first.cuts());
    cuts.addAll(second.cuts());
    SheetPart rest = first.rest().area() >= second.rest().area() ? first.rest() : second.rest();
    return new Sawn(all, cuts, rest.area() > 0 ? rest : SheetPart.NONE);
  }
}
