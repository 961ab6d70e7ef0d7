package sheathwright.roof;

/**
 * One side of a roof plane.
 *
 * @param kind what the trade calls it
 * @param from one end
 * @param to the other end
 */
public record Edge(Kind kind, Spot from, Spot to) {

  /** What the trade calls a side of a plane, by how it lies. */
  public enum Kind {
    /** Level, with the plane above it. */
    EAVE,
    /** Level, with the plane below it. */
    RIDGE,
    /** Straight up the slope: a rake, or a wall that the plane ends at. */
    RAKE,
    /** Slanted, the plane growing narrower toward the ridge. */
    HIP,
    /** Slanted, the plane growing wider toward the ridge. */
    VALLEY
  }

  /** Inches along the wood. */
  public double length() {
    return Math.hypot(to.x() - from.x(), to.y() - from.y());
  }
}
