package sheathwright.sheathing.layout;

/**
 * Where one course ends and the next begins.
 *
 * @param y inches up the slope
 * @param length with wood on both sides, in inches
 * @param bays spaces between supports that it crosses
 */
public record CourseLine(double y, double length, int bays) {}
