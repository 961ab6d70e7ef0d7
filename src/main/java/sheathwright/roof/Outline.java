package sheathwright.roof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;

/**
 * The shape of a roof plane as it lies, with its openings: inches along the eave and up the slope.
 * Corners are kept to a thousandth of an inch or so, and parts of less than {@link #SMALLEST_AREA}
 * count as touching only.
 */
public final class Outline {

  /** Square inches below which two shapes only touch. */
  static final double SMALLEST_AREA = 0.05;

  private static final double STEPS_AN_INCH = 1024;
  private static final GeometryFactory SHAPES =
      new GeometryFactory(new PrecisionModel(STEPS_AN_INCH));

  private final Geometry shape;
  private final Polygon whole;

  private Outline(Polygon whole, Geometry shape) {
    this.whole = whole;
    this.shape = shape;
  }

  /**
   * Any outline.
   *
   * @param corners at least three, in order round the plane, either way
   * @throws RefusedException if its sides cross or it has no area
   */
  public static Outline of(List<Spot> corners) {
    Polygon polygon = polygon(corners, "the outline");
    return new Outline(polygon, polygon);
  }

  /** A connected part of a plane by itself. */
  static Outline of(Region part) {
    Outline outline = of(part.corners());
    for (List<Spot> hole : part.holes()) {
      outline = outline.without(hole);
    }
    return outline;
  }

  /** A plane whose eave and ridge are level and whose sides lean in by so much, or out. */
  public static Outline trapezoid(double eave, double height, double leftLean, double rightLean) {
    List<Spot> corners = new ArrayList<>();
    corners.add(new Spot(0, 0));
    corners.add(new Spot(eave, 0));
    corners.add(new Spot(eave - rightLean, height));
    if (eave - rightLean - leftLean > 1 / STEPS_AN_INCH) {
      corners.add(new Spot(leftLean, height));
    }
    return of(corners);
  }

  /**
   * This outline with an opening cut out: a chimney, a skylight, a dormer.
   *
   * @throws RefusedException if the opening has no size, or reaches off the plane or into another
   *     opening
   */
  public Outline without(Box opening) {
    Polygon hole = rectangle(opening);
    if (hole.isEmpty()) {
      throw new RefusedException(
          "an opening of %s by %s in has no size; give its width along the eave and its height up the slope, both more than 0"
              .formatted(plain(opening.width()), plain(opening.height())));
    }
    return without(hole);
  }

  /** This outline with an opening of any shape cut out, such as a dormer with its valleys. */
  public Outline without(List<Spot> corners) {
    return without(polygon(corners, "the opening"));
  }

  private Outline without(Polygon hole) {
    if (!shape.covers(hole)) {
      Box opening = box(hole.getEnvelopeInternal());
      throw new RefusedException(
          "the opening from %s to %s in along the eave and %s to %s in up the slope reaches off the plane, or into another"
                  .formatted(
                      plain(opening.left()),
                      plain(opening.right()),
                      plain(opening.bottom()),
                      plain(opening.top()))
              + " opening; measure it from the plane's lower left corner, or give only the part on this plane");
    }
    return new Outline(whole, OverlayNGRobust.overlay(shape, hole, OverlayNG.DIFFERENCE));
  }

  /** Square inches, openings left out. */
  public double area() {
    return shape.getArea();
  }

  /** The least upright rectangle round it. */
  public Box bounds() {
    return box(whole.getEnvelopeInternal());
  }

  /**
   * The parts of the plane that lie in a rectangle, each connected, from the left and from below.
   */
  public List<Region> within(Box box) {
    Polygon slot = rectangle(box);
    if (shape.contains(slot)) {
      return List.of(region(slot));
    }
    if (!shape.intersects(slot)) {
      return List.of();
    }
    Geometry common = OverlayNGRobust.overlay(shape, slot, OverlayNG.INTERSECTION);
    return regions(common);
  }

  /** The whole plane as regions. */
  public List<Region> regions() {
    return regions(shape);
  }

  /** Whether all of a rectangle is on the plane and off every opening. */
  public boolean covers(Box box) {
    return shape.covers(rectangle(box));
  }

  /** How much of a straight line has wood on both its sides, in inches. */
  public double lengthInside(Spot from, Spot to) {
    LineString line = SHAPES.createLineString(new Coordinate[] {at(from), at(to)});
    Geometry inside = OverlayNGRobust.overlay(line, shape, OverlayNG.INTERSECTION);
    Geometry lines = SHAPES.buildGeometry(LinearComponentExtracter.getLines(inside));
    return lines.difference(shape.getBoundary()).getLength();
  }

  /** The sides of the plane; openings have none of these names. */
  public List<Edge> edges() {
    Coordinate[] ring = whole.getExteriorRing().getCoordinates();
    boolean isCounterClockwise = Orientation.isCCW(ring);
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i + 1 < ring.length; i++) {
      Coordinate from = isCounterClockwise ? ring[i] : ring[ring.length - 1 - i];
      Coordinate to = isCounterClockwise ? ring[i + 1] : ring[ring.length - 2 - i];
      edges.add(new Edge(kind(from, to), spot(from), spot(to)));
    }
    return edges;
  }

  /** What a side is, the plane lying to its left as it is walked. */
  private static Edge.Kind kind(Coordinate from, Coordinate to) {
    double along = to.x - from.x;
    double up = to.y - from.y;
    if (up == 0) {
      return along > 0 ? Edge.Kind.EAVE : Edge.Kind.RIDGE;
    }
    if (along == 0) {
      return Edge.Kind.RAKE;
    }
    // Up or down, a side that is walked toward the left closes in on the plane, which lies to its
    // left.
    return along < 0 ? Edge.Kind.HIP : Edge.Kind.VALLEY;
  }

  private static Polygon polygon(List<Spot> corners, String what) {
    if (corners.size() < 3) {
      throw new RefusedException(
          what
              + " has "
              + corners.size()
              + " corners; it takes at least 3, in order round the plane");
    }
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i <= corners.size(); i++) {
      ring[i] = at(corners.get(i % corners.size()));
    }
    Polygon polygon = SHAPES.createPolygon(ring);
    IsValidOp validity = new IsValidOp(polygon);
    if (!validity.isValid() || polygon.getArea() < SMALLEST_AREA) {
      Coordinate where =
          validity.isValid() ? ring[0] : validity.getValidationError().getCoordinate();
      throw new RefusedException(
          "%s crosses itself or has no area, near %s in along the eave and %s in up the slope; give its corners in order round the plane"
              .formatted(what, plain(where.x), plain(where.y)));
    }
    return polygon;
  }

  /** Empty if it is narrower than a step. */
  private static Polygon rectangle(Box box) {
    Coordinate lowerLeft = at(new Spot(box.left(), box.bottom()));
    Coordinate upperRight = at(new Spot(box.right(), box.top()));
    if (lowerLeft.x >= upperRight.x || lowerLeft.y >= upperRight.y) {
      return SHAPES.createPolygon();
    }
    Coordinate upperLeft = new Coordinate(lowerLeft.x, upperRight.y);
    return SHAPES.createPolygon(
        new Coordinate[] {
          upperLeft, upperRight, new Coordinate(upperRight.x, lowerLeft.y), lowerLeft, upperLeft
        });
  }

  private static Coordinate at(Spot spot) {
    Coordinate coordinate = new Coordinate(spot.x(), spot.y());
    SHAPES.getPrecisionModel().makePrecise(coordinate);
    return coordinate;
  }

  private static List<Region> regions(Geometry shape) {
    List<Region> regions = new ArrayList<>();
    for (Object part : PolygonExtracter.getPolygons(shape)) {
      Polygon polygon = (Polygon) part;
      if (polygon.getArea() >= SMALLEST_AREA) {
        regions.add(region(polygon));
      }
    }
    regions.sort(
        Comparator.comparingDouble((Region each) -> each.bounds().left())
            .thenComparingDouble(each -> each.bounds().bottom()));
    return regions;
  }

  private static Region region(Polygon polygon) {
    List<List<Spot>> holes = new ArrayList<>();
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      holes.add(spots(polygon.getInteriorRingN(i)));
    }
    return new Region(
        spots(polygon.getExteriorRing()),
        holes,
        polygon.getArea(),
        box(polygon.getEnvelopeInternal()));
  }

  private static List<Spot> spots(LinearRing ring) {
    Coordinate[] round = ring.getCoordinates();
    return Arrays.stream(round).limit(round.length - 1L).map(Outline::spot).toList();
  }

  private static Spot spot(Coordinate coordinate) {
    return new Spot(coordinate.x, coordinate.y);
  }

  private static Box box(Envelope envelope) {
    return new Box(envelope.getMinX(), envelope.getMinY(), envelope.getMaxX(), envelope.getMaxY());
  }

  private static String plain(double inches) {
    return Shown.plain(inches);
  }
}
