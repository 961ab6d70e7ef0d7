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
 * @param all the shapes of the picture, across whose edges no words stand where others are free
 * @param frame of the picture
 * @param taken where words may not stand
 */
record FreeSpot(List<List<Spot>> rings, List<List<List<Spot>>> all, Box frame, List<Box> taken) {

  /** So many places are looked at along the shape and up it. */
  private static final int STEPS = 32;

  /** The middle of words of a size; where all is taken, the one that is wanted. */
  Spot near(Spot wanted, double wide, double high) {
    if (isFree(wanted, wide, high)) {
      return wanted;
    }
    Box round = around(rings.stream().flatMap(List::stream).toList()).grown(wide);
    List<Spot> spots = new ArrayList<>();
    for (int along = 0; along <= STEPS; along++) {
      for (int up = 0; up <= STEPS; up++) {
        spots.add(
            new Spot(
                round.left() + round.width() * along / STEPS,
                round.bottom() + round.height() * up / STEPS));
      }
    }
    return spots.stream()
        .filter(spot -> isFree(spot, wide, high) && frame.holds(box(spot, wide, high)))
        .min(
            Comparator.<Spot>comparingInt(spot -> rank(box(spot, wide, high)))
                .thenComparingDouble(
                    spot -> Math.hypot(spot.x() - wanted.x(), spot.y() - wanted.y())))
        .orElse(wanted);
  }

  private boolean isFree(Spot middle, double wide, double high) {
    return taken.stream().noneMatch(box(middle, wide, high)::overlaps);
  }

  /** Within the shape, else beside all shapes, else across an edge. */
  private int rank(Box words) {
    List<Spot> corners = Sketch.corners(words);
    if (corners.stream().allMatch(spot -> isInside(rings, spot))) {
      return 0;
    }
    boolean isBeside =
        all.stream().noneMatch(shape -> corners.stream().anyMatch(spot -> isInside(shape, spot)));
    return isBeside ? 1 : 2;
  }

  /**
   * A line from the spot to the right crosses the edges of what holds it an odd number of times.
   */
  private static boolean isInside(List<List<Spot>> rings, Spot spot) {
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
    return crossed % 2 != 0;
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
