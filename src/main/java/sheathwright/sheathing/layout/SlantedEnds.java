package sheathwright.sheathing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.cutting.sheet.SlantedPair;
import sheathwright.cutting.sheet.SlantedPairing;
import sheathwright.cutting.sheet.SlantedPairs;
import sheathwright.cutting.sheet.SlantedPiece;
import sheathwright.roof.Region;
import sheathwright.roof.Spot;

/**
 * Pieces at hips and valleys: two of the same hand share one slanted cut, the one turned half
 * round, which keeps the strength axis. A pair may be 1/64 in too wide for its sheet, because a
 * slanted saw cut is a little wider than a square one.
 */
public final class SlantedEnds {

  private static final double FINE = 64;
  private static final double HAIR = 1.0 / 128;

  private SlantedEnds() {}

  /**
   * A part of a sheet as it lies on the plane.
   *
   * @param label what it is called
   * @param region its shape, gaps included
   */
  record Part(String label, Region region) {}

  /** The parts as rectangles, those that nest as one; nothing if none do. */
  static Optional<List<CutPiece>> nested(List<Part> parts, double gap) {
    List<Part> slanted = new ArrayList<>();
    List<SlantedPiece> pieces = new ArrayList<>();
    for (Part part : parts) {
      slanted(part.region(), gap)
          .ifPresent(
              piece -> {
                slanted.add(part);
                pieces.add(piece);
              });
    }
    SlantedPairing pairing =
        SlantedPairs.pair(pieces, units(LayoutRules.MODULE_LENGTH - gap), units(gap), 1);
    if (pairing.pairs().isEmpty()) {
      return Optional.empty();
    }
    List<Part> left = new ArrayList<>(parts);
    List<CutPiece> cut = new ArrayList<>();
    for (SlantedPair pair : pairing.pairs()) {
      Part one = slanted.get(pair.first());
      Part other = slanted.get(pair.second());
      left.remove(one);
      left.remove(other);
      cut.add(
          new CutPiece(
              one.label() + " with " + other.label(),
              pair.rectangle().width() / FINE,
              pair.rectangle().height() / FINE,
              1));
    }
    left.forEach(part -> cut.add(rectangle(part, gap)));
    return Optional.of(cut);
  }

  /** The rectangle that a part is cut out of, to the sixty-fourth below. */
  static CutPiece rectangle(Part part, double gap) {
    return new CutPiece(
        part.label(),
        fine(part.region().bounds().width()) - gap,
        fine(part.region().bounds().height()) - gap,
        1);
  }

  /** A size to the sixty-fourth of an inch below: closer than a saw is set. */
  public static double fine(double inches) {
    return Math.floor(inches * FINE + 0.25) / FINE;
  }

  private static Optional<SlantedPiece> slanted(Region region, double gap) {
    if (!region.holes().isEmpty() || region.corners().size() != 4 || region.isRectangle()) {
      return Optional.empty();
    }
    double[] below = ends(region, region.bounds().bottom());
    double[] above = ends(region, region.bounds().top());
    if (below.length != 2 || above.length != 2) {
      return Optional.empty();
    }
    boolean isSquareOnTheLeft = Math.abs(below[0] - above[0]) < HAIR;
    boolean isSquareOnTheRight = Math.abs(below[1] - above[1]) < HAIR;
    long bottom = units(below[1] - below[0] - gap);
    long top = units(above[1] - above[0] - gap);
    if (isSquareOnTheLeft == isSquareOnTheRight || bottom < 1 || top < 1 || bottom == top) {
      return Optional.empty();
    }
    return Optional.of(
        new SlantedPiece(
            bottom,
            top,
            units(region.bounds().height() - gap),
            isSquareOnTheLeft ? SlantedPiece.Hand.RIGHT : SlantedPiece.Hand.LEFT));
  }

  /** Where the corners at one height lie, from the left. */
  private static double[] ends(Region region, double y) {
    return region.corners().stream()
        .filter(corner -> Math.abs(corner.y() - y) < HAIR)
        .mapToDouble(Spot::x)
        .sorted()
        .toArray();
  }

  private static long units(double inches) {
    return Math.round(inches * FINE);
  }
}
