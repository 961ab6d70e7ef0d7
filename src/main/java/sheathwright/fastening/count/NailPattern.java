package sheathwright.fastening.count;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Rounding;

/**
 * Nails of one rectangular piece over supports that may stand anywhere, in plain numbers, for whole
 * decks. Counts as {@code nails_per_sheet} does where the supports are regular.
 *
 * <p>Each piece is counted with its own rows: where two pieces share a rafter, both have a row on
 * it. Does not cover slanted pieces, or which spacing the code asks for.
 */
public final class NailPattern {

  /** A piece's end that comes this near to a support's center lies on it: half of 1-1/2 in. */
  static final double ON_SUPPORT_IN = 0.75;

  private static final double EDGE_DISTANCE_IN = 0.375;

  private NailPattern() {}

  /**
   * Nails of one piece, all lengths in inches.
   *
   * @param left where the piece begins along the eave
   * @param right where it ends, more than left
   * @param height of the piece along the supports
   * @param centers of the supports along the eave, in rising order; those outside the piece are
   *     passed over
   * @param edgeSpacing nail to nail on a support under an end, and on blocking
   * @param fieldSpacing nail to nail on the supports between
   * @param blocked whether both long edges lie on blocking between the supports and are nailed to
   *     it
   * @return whole nails; none on an end that lies on no support
   */
  public static int nails(
      double left,
      double right,
      double height,
      List<Double> centers,
      double edgeSpacing,
      double fieldSpacing,
      boolean blocked) {
    double line = Math.max(0, height - 2 * EDGE_DISTANCE_IN);
    int nails = 0;
    List<Double> between = new ArrayList<>();
    double first = left;
    double last = right;
    for (double center : centers) {
      if (Math.abs(center - left) <= ON_SUPPORT_IN) {
        first = center;
        nails += spaces(line, edgeSpacing) + 1;
      } else if (Math.abs(center - right) <= ON_SUPPORT_IN) {
        last = center;
        nails += spaces(line, edgeSpacing) + 1;
      } else if (center > left && center < right) {
        between.add(center);
        nails += spaces(line, fieldSpacing) + 1;
      }
    }
    return nails + (blocked ? 2 * onBlocking(first, last, between, edgeSpacing) : 0);
  }

  /** Nails on one blocked edge, those on the supports left out. */
  private static int onBlocking(
      double first, double last, List<Double> between, double edgeSpacing) {
    int nails = 0;
    double from = first;
    for (double center : between) {
      nails += spaces(center - from, edgeSpacing) - 1;
      from = center;
    }
    return nails + spaces(last - from, edgeSpacing) - 1;
  }

  private static int spaces(double along, double spacing) {
    return (int) Rounding.up(along / spacing);
  }
}
