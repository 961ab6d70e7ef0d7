package sheathwright.sheathing.board;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * What a covering bears of the boards under it.
 *
 * @param minThickness least thickness that the covering wants
 * @param maxGap widest gap that the covering bears
 * @param maxHole widest hole that may be patched with metal
 */
public record CoveringLimits(
    @Column(
            value = "min_thickness_in",
            preset = "25/32",
            least = 0,
            most = 6,
            rule = "25/32 is commonly required")
        Figure<Length> minThickness,
    @Column(
            value = "max_gap_in",
            preset = "1/4",
            least = 0,
            most = 12,
            rule = "1/4 is commonly required")
        Figure<Length> maxGap,
    @Column(
            value = "max_hole_in",
            preset = "1",
            least = 0,
            most = 48,
            rule = "1 is commonly required")
        Figure<Length> maxHole) {

  private static final Columns COLUMNS = Columns.of(CoveringLimits.class);

  /** What covering makers commonly ask for. */
  public static final CoveringLimits COMMONLY_ASKED = new CoveringLimits(null, null, null);

  public CoveringLimits {
    minThickness = COLUMNS.let("minThickness", minThickness);
    maxGap = COLUMNS.let("maxGap", maxGap);
    maxHole = COLUMNS.let("maxHole", maxHole);
  }

  /** A least thickness, and what is commonly required besides. */
  public static CoveringLimits minThickness(Figure<Length> given) {
    return new CoveringLimits(given, null, null);
  }

  public CoveringLimits maxGap(Figure<Length> given) {
    return new CoveringLimits(minThickness, given, maxHole);
  }

  public CoveringLimits maxHole(Figure<Length> given) {
    return new CoveringLimits(minThickness, maxGap, given);
  }
}
