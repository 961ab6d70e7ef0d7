package sheathwright.job.solve;

import java.util.List;
import sheathwright.figure.Lengths;

/**
 * Pieces of which a little more would have come out of the stock: the same list once more with each
 * piece half a saw cut less, which most pieces can be spared.
 */
final class NearMiss {

  private NearMiss() {}

  /** How much less each piece is. */
  static double less(double kerf) {
    return kerf / 2;
  }

  /** Whether there is a saw cut to halve, and each piece is longer than that. */
  static boolean isPossible(double kerf, List<PieceRows.Alike> rows) {
    return kerf > 0
        && rows.stream()
            .flatMap(row -> row.lengths().stream())
            .allMatch(length -> length > less(kerf));
  }

  /** The same pieces, each less. */
  static List<PieceRows.Alike> less(double kerf, List<PieceRows.Alike> rows) {
    return rows.stream()
        .map(
            row ->
                new PieceRows.Alike(
                    row.line(),
                    row.lengths().stream().map(length -> length - less(kerf)).toList(),
                    row.count(),
                    row.label()))
        .toList();
  }

  /** The near miss in words. */
  static String inWords(double kerf, String how, String saved) {
    return "with each piece %s in %s: %s".formatted(Lengths.onTape(less(kerf)), how, saved);
  }
}
