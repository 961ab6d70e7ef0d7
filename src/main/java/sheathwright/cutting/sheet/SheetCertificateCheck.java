package sheathwright.cutting.sheet;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToLongFunction;
import sheathwright.cutting.program.Certificate;

/**
 * Checks a certificate against its order from the definitions alone, in whole numbers. It knows no
 * solver: for every rectangle whose sides are sums of pieces it finds the most worth that
 * guillotine cuts can free from it, and adds up.
 */
public final class SheetCertificateCheck {

  /** Rectangles of more sides than these would take minutes. */
  private static final long MOST_RECTANGLES = 4_000_000;

  private final SheetOrder order;
  private final Certificate certificate;
  private final long[] widths;
  private final long[] heights;

  private SheetCertificateCheck(SheetOrder order, Certificate certificate) {
    this.order = order;
    this.certificate = certificate;
    widths = sums(SheetPiece::width, Offcut::width, order.sheetWidth());
    heights = sums(SheetPiece::height, Offcut::height, order.sheetHeight());
  }

  /**
   * Whether the certificate proves what it says.
   *
   * @throws IllegalArgumentException if the pieces have so many sizes that the check would take
   *     long
   */
  public static boolean holds(SheetOrder order, Certificate certificate) {
    boolean isWhole =
        certificate.parts() > 0
            && certificate.worth().size() == order.pieces().size()
            && certificate.earning().size() == order.offcuts().size()
            && certificate.worth().stream().allMatch(worth -> worth >= 0 && worth < 1L << 40);
    return isWhole && new SheetCertificateCheck(order, certificate).proves();
  }

  private boolean proves() {
    long[][] most = most();
    if (held(most, order.sheetWidth(), order.sheetHeight()) > certificate.parts()) {
      return false;
    }
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < order.pieces().size(); i++) {
      sum = sum.add(product(certificate.worth().get(i), order.pieces().get(i).count()));
    }
    for (int i = 0; i < order.offcuts().size(); i++) {
      Offcut offcut = order.offcuts().get(i);
      if (held(most, offcut.width(), offcut.height()) > certificate.earning().get(i)) {
        return false;
      }
      sum = sum.subtract(product(certificate.earning().get(i), offcut.count()));
    }
    // Sheets are whole: more than one sheet less is at least this.
    return certificate.atLeast() == 0
        || sum.compareTo(product(certificate.parts(), certificate.atLeast() - 1)) > 0;
  }

  /** Worth of each rectangle: one piece, or what the two parts of a cut are worth. */
  private long[][] most() {
    long[][] most = new long[widths.length][heights.length];
    for (int i = 0; i < order.pieces().size(); i++) {
      SheetPiece piece = order.pieces().get(i);
      int column = place(widths, piece.width() + order.kerf());
      int row = place(heights, piece.height() + order.kerf());
      if (widths[column] == piece.width() + order.kerf()
          && heights[row] == piece.height() + order.kerf()) {
        most[column][row] = Math.max(most[column][row], certificate.worth().get(i));
      }
    }
    for (int column = 1; column < widths.length; column++) {
      for (int row = 1; row < heights.length; row++) {
        long best =
            Math.max(most[column][row], Math.max(most[column - 1][row], most[column][row - 1]));
        for (int left = 1; 2 * widths[left] <= widths[column]; left++) {
          int right = place(widths, widths[column] - widths[left]);
          best = Math.max(best, most[left][row] + most[right][row]);
        }
        for (int below = 1; 2 * heights[below] <= heights[row]; below++) {
          int above = place(heights, heights[row] - heights[below]);
          best = Math.max(best, most[column][below] + most[column][above]);
        }
        most[column][row] = best;
      }
    }
    return most;
  }

  private long held(long[][] most, long width, long height) {
    return most[place(widths, width + order.kerf())][place(heights, height + order.kerf())];
  }

  /** The last sum that is no longer than a length. */
  private static int place(long[] sums, long length) {
    int at = Arrays.binarySearch(sums, length);
    return at >= 0 ? at : -at - 2;
  }

  /**
   * Every length that the pieces wanted, each with its kerf, can add up to, as far as a stock
   * reaches: no cut between pieces pushed to the edge lies elsewhere.
   */
  private long[] sums(
      ToLongFunction<SheetPiece> side, ToLongFunction<Offcut> ofOffcut, long ofSheet) {
    long longest =
        Math.max(ofSheet, order.offcuts().stream().mapToLong(ofOffcut).max().orElse(0))
            + order.kerf();
    TreeSet<Long> sums = new TreeSet<>(List.of(0L));
    for (SheetPiece piece : order.pieces()) {
      long length = side.applyAsLong(piece) + order.kerf();
      long copies = Math.min(piece.count(), longest / length);
      for (long copy = 0; copy < copies; copy++) {
        List<Long> longer =
            sums.headSet(longest - length, true).stream().map(sum -> sum + length).toList();
        if (!sums.addAll(longer)) {
          break;
        }
        if ((long) sums.size() * sums.size() > MOST_RECTANGLES) {
          throw new IllegalArgumentException("too many sizes to check in a minute");
        }
      }
    }
    return sums.stream().mapToLong(Long::longValue).toArray();
  }

  private static BigInteger product(long one, long other) {
    return BigInteger.valueOf(one).multiply(BigInteger.valueOf(other));
  }
}
