package sheathwright.sheathing.place;

import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Region;

/**
 * A piece of panel of the old deck, whole or cut.
 *
 * @param key what it is called
 * @param parts the piece as it lies, and whatever is too small to be a place and belongs to it
 */
public record Place(PlaceKey key, List<Region> parts) {

  /** Square inches of module, openings left out. */
  public double area() {
    return parts.stream().mapToDouble(Region::area).sum();
  }

  /** The least upright rectangle round it, gaps included, in inches. */
  public Box bounds() {
    return parts.stream().map(Region::bounds).reduce(Box::with).orElseThrow();
  }

  /** The piece itself. */
  public Region piece() {
    return parts.get(0);
  }

  /** What of a rectangle lies in it. */
  public List<Region> within(Box box) {
    return parts.stream()
        .filter(part -> part.bounds().overlaps(box))
        .flatMap(part -> part.outline().within(box).stream())
        .toList();
  }
}
