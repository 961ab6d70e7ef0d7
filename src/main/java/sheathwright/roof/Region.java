package sheathwright.roof;

import java.util.ArrayList;
import java.util.List;

/**
 * A connected part of a plane.
 *
 * @param corners in order round it, the first not repeated
 * @param holes openings inside it, each likewise
 * @param area square inches
 * @param bounds the least upright rectangle round it
 */
public record Region(List<Spot> corners, List<List<Spot>> holes, double area, Box bounds) {

  private static final double HAIR = 1.0 / 512;

  /** Whether it is an upright rectangle without holes. */
  public boolean isRectangle() {
    return area > bounds.area() - Outline.SMALLEST_AREA;
  }

  /** The middle of its area, holes not counted. */
  public Spot middle() {
    double twice = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < corners.size(); i++) {
      Spot from = corners.get(i);
      Spot to = corners.get((i + 1) % corners.size());
      double cross = from.x() * to.y() - to.x() * from.y();
      twice += cross;
      x += (from.x() + to.x()) * cross;
      y += (from.y() + to.y()) * cross;
    }
    return new Spot(x / (3 * twice), y / (3 * twice));
  }

  /** This part by itself, as an outline. */
  public Outline outline() {
    return Outline.of(this);
  }

  /** How much of their level and upright sides this part and another have in common, in inches. */
  public double sharedSide(Region other) {
    return sides().stream()
        .flatMapToDouble(
            side -> other.sides().stream().mapToDouble(beside -> inCommon(side, beside)))
        .sum();
  }

  private static double inCommon(Box side, Box beside) {
    boolean isUpright =
        side.width() < HAIR
            && beside.width() < HAIR
            && Math.abs(side.left() - beside.left()) < HAIR;
    boolean isLevel =
        side.height() < HAIR
            && beside.height() < HAIR
            && Math.abs(side.bottom() - beside.bottom()) < HAIR;
    Box common = side.and(beside);
    double length = isUpright ? common.height() : isLevel ? common.width() : 0;
    return Math.max(0, length);
  }

  /** The sides round it and round its holes, each as the box between its ends. */
  private List<Box> sides() {
    List<List<Spot>> rings = new ArrayList<>(List.of(corners));
    rings.addAll(holes);
    List<Box> sides = new ArrayList<>();
    for (List<Spot> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Spot from = ring.get(i);
        Spot to = ring.get((i + 1) % ring.size());
        sides.add(Box.at(from.x(), from.y(), 0, 0).with(Box.at(to.x(), to.y(), 0, 0)));
      }
    }
    return sides;
  }
}
