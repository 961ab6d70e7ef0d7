package sheathwright.loads.wind;

import java.util.ArrayList;
import java.util.List;
import sheathwright.roof.Spot;

/**
 * A convex part of a plane, and what a straight cut leaves of it.
 *
 * @param corners in order round it; none if nothing is left
 */
record ConvexPart(List<Spot> corners) {

  private static final double SMALLEST_AREA = 1e-6;

  /**
   * A straight cut: everything where {@code along × x + up × y} is at most a limit lies within it.
   */
  record Cut(double along, double up, double most) {

    /** The part within the cut. */
    ConvexPart within(ConvexPart part) {
      return part.where(along, up, most);
    }

    /** The rest of the part. */
    ConvexPart beyond(ConvexPart part) {
      return part.where(-along, -up, -most);
    }
  }

  /** Whether there is nothing of it. */
  boolean isEmpty() {
    return area() < SMALLEST_AREA;
  }

  /** Its area, in the square of the unit of its corners. */
  double area() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Spot here = corners.get(i);
      Spot next = corners.get((i + 1) % corners.size());
      twice += here.x() * next.y() - next.x() * here.y();
    }
    return twice / 2;
  }

  private ConvexPart where(double along, double up, double most) {
    List<Spot> left = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Spot here = corners.get(i);
      Spot next = corners.get((i + 1) % corners.size());
      double over = along * here.x() + up * here.y() - most;
      double nextOver = along * next.x() + up * next.y() - most;
      if (over <= 0) {
        left.add(here);
      }
      if (over < 0 && nextOver > 0 || over > 0 && nextOver < 0) {
        double share = over / (over - nextOver);
        left.add(
            new Spot(
                here.x() + share * (next.x() - here.x()),
                here.y() + share * (next.y() - here.y())));
      }
    }
    return new ConvexPart(List.copyOf(left));
  }
}
