package sheathwright.roof;

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

  /** Whether it is an upright rectangle without holes. */
  public boolean isRectangle() {
    return area > bounds.area() - Outline.SMALLEST_AREA;
  }
}
