package sheathwright.workbook.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;

/**
 * What of a box lies on a plane: a slanted edge or an opening cuts it off. A box that lies beside
 * the plane is shown whole, so that it is seen.
 *
 * @param rings round its parts and their holes
 * @param middle of the largest part
 */
record OnWood(List<List<Spot>> rings, Spot middle) {

  /** That of a box. */
  static OnWood of(Plane plane, Box box) {
    List<Region> parts = plane.outline(Reading.aside()).within(box);
    return parts.stream()
        .max(Comparator.comparingDouble(Region::area))
        .map(largest -> new OnWood(rings(parts), largest.middle()))
        .orElseGet(
            () -> new OnWood(List.of(Sketch.corners(box)), new Spot(box.middleX(), box.middleY())));
  }

  /** The rings round regions and round their holes. */
  static List<List<Spot>> rings(List<Region> regions) {
    List<List<Spot>> rings = new ArrayList<>();
    for (Region region : regions) {
      rings.add(region.corners());
      rings.addAll(region.holes());
    }
    return rings;
  }
}
