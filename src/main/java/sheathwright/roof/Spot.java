package sheathwright.roof;

/**
 * A point of a roof plane.
 *
 * @param x inches along the eave, from the left as one looks up the slope
 * @param y inches up the slope, along the wood
 */
public record Spot(double x, double y) {}
