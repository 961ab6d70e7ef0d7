package sheathwright.workbook.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Spot;

/**
 * Where words stand in a picture: where they are wanted if nothing lies there, else nearby, within
 * a shape if they fit into it.
 *
 * @param rings round the shape and its holes
 * @param taken where words may not stand
 */
record FreeSpot(List<List<Spot>> rings, List<Box> taken) {

  /** So many places are looked at along the shape and up it. */
  private static final int STEPS = 32;

  /** The middle of words of a size; where all is taken, the one that is wanted. */
  Spot near(Spot wanted, double wide, double high) {
    if (isFree(wanted, wide, high)) {
      return wanted;
    }
    Box all = bounds().grown(high);
    List<Spot> spots = new ArrayList<>();
    for (int along = 0; along <= STEPS; along++) {
      for (int up = 0; up <= STEPS; up++) {
        spots.add(
            new Spot(
                all.left() + all.width() * along / STEPS,
                all.bottom() + all.height() * up / STEPS));
      }
    }
    return spots.stream()
        .filter(spot -> isFree(spot, wide, high))
        .min(
            Comparator.<Spot>comparingLong(spot -> cornersOutside(spot, wide, high))
                .thenComparingDouble(
                    spot -> Math.hypot(spot.x() - wanted.x(), spot.y() - wanted.y())))
        .orElse(wanted);
  }

  private boolean isFree(Spot middle, double wide, double high) {
    return taken.stream().noneMatch(box(middle, wide, high)::overlaps);
  }

  private long cornersOutside(Spot middle, double wide, double high) {
    return Sketch.corners(box(middle, wide, high)).stream().filter(spot -> !isInside(spot)).count();
  }

  /**
   * A line from the spot to the right crosses the edges of what holds it an odd number of times.
   */
  private boolean isInside(Spot spot) {
    int crossed = 0;
    for (List<Spot> ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Spot from = ring.get(i);
        Spot to = ring.get((i + 1) % ring.size());
        if (from.y() > spot.y() != to.y() > spot.y()) {
          double share = (spot.y() - from.y()) / (to.y() - from.y());
          crossed += from.x() + share * (to.x() - from.x()) > spot.x() ? 1 : 0;
        }
      }
    }
    return crossed % 2 == 1;
  }

  private Box bounds() {
    return around(rings.stream().flatMap(List::stream).toList());
  }

  /** The least box round some spots. */
  static Box around(List<Spot> spots) {
    return spots.stream()
        .map(spot -> new Box(spot.x(), spot.y(), spot.x(), spot.y()))
        .reduce(Box::with)
        .orElseThrow();
  }

  /** Words of a size round their middle. */
  static Box box(Spot middle, double wide, double high) {
    return Box.at(middle.x() - wide / 2, middle.y() - high / 2, wide, high);
  }
}
