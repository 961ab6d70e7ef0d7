package sheathwright.sheathing.layout;

import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Region;

/**
 * One place for a sheet on a plane, where any of it is needed.
 *
 * @param course from the eave, beginning with 1
 * @param place the module it fills, gap included
 * @param parts what of it lies on the plane; several where an opening parts it
 * @param isWhole whether nothing is cut off it
 * @param spans the fewest spans between supports that any part crosses
 */
public record Sheet(int course, Box place, List<Region> parts, boolean isWhole, int spans) {

  private static final double SLIVER = 6 + 1.0 / 64;

  /**
   * Whether a part is so thin that it should be left out, or taken into its neighbor, on purpose.
   */
  public boolean hasSliver() {
    return parts.stream()
        .anyMatch(
            part ->
                part.bounds().width() <= SLIVER
                    || part.bounds().height() <= SLIVER
                    || part.area() <= 2 * SLIVER * SLIVER);
  }
}
