package sheathwright.roof;

/**
 * An upright rectangle on a roof plane, in inches.
 *
 * @param left where it begins along the eave
 * @param bottom where it begins up the slope
 * @param right where it ends along the eave
 * @param top where it ends up the slope
 */
public record Box(double left, double bottom, double right, double top) {

  /** A rectangle by its lower left corner and its size. */
  public static Box at(double left, double bottom, double width, double height) {
    return new Box(left, bottom, left + width, bottom + height);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public double area() {
    return width() * height();
  }

  public double middleX() {
    return (left + right) / 2;
  }

  public double middleY() {
    return (bottom + top) / 2;
  }

  /** Whether the two share more than a line. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
  }

  /** Whether the other lies in this one, perhaps along its edge. */
  public boolean holds(Box other) {
    return left <= other.left && other.right <= right && bottom <= other.bottom && other.top <= top;
  }

  /** What the two have in common; a box of no or negative size where they have nothing. */
  public Box and(Box other) {
    return new Box(
        Math.max(left, other.left),
        Math.max(bottom, other.bottom),
        Math.min(right, other.right),
        Math.min(top, other.top));
  }

  /** The least box that holds both. */
  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  /** Larger by a margin on every side. */
  public Box grown(double margin) {
    return new Box(left - margin, bottom - margin, right + margin, top + margin);
  }
}
