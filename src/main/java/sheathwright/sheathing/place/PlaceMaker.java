package sheathwright.sheathing.place;

import static sheathwright.sheathing.layout.LayoutRules.HAIR;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.roof.Box;
import sheathwright.roof.Outline;
import sheathwright.roof.Region;
import sheathwright.sheathing.layout.LayoutRules;

/**
 * Makes the places of a plane: each connected piece of a module on the plane is one, and what is
 * too small belongs to the neighbor with which it shares the longest joint. A measured joint takes
 * the place of the assumed one beside it, as long as no place is lost or won by that; any other
 * splits the place that it crosses, so that no key ever moves.
 */
final class PlaceMaker {

  /** Square inches under which a piece is no place. */
  private static final double SMALLEST = 144;

  /** Inches within which a measured joint is the assumed one, found where it is. */
  private static final double SAME_JOINT = 24;

  private static final int MOST_COURSES = 200;

  private final String plane;
  private final Outline outline;
  private final OldJoints.Plain old;
  private final List<Double> lines = new ArrayList<>();

  /** Where the end joints of a course lie. */
  private record Joints(List<Double> between, List<Double> splitting) {}

  /** Connected wood of one course, or several pieces of which only one is large enough. */
  private record Piece(int course, Region main, List<Region> parts) {

    static Piece of(int course, Region region) {
      return new Piece(course, region, List.of(region));
    }

    double area() {
      return parts.stream().mapToDouble(Region::area).sum();
    }

    double sharedSide(Piece other) {
      return parts.stream()
          .flatMapToDouble(part -> other.parts.stream().mapToDouble(part::sharedSide))
          .sum();
    }

    Piece with(Piece other) {
      boolean isLarger = main.area() >= other.main.area();
      Piece first = isLarger ? this : other;
      Piece second = isLarger ? other : this;
      List<Region> all = new ArrayList<>(first.parts);
      all.addAll(second.parts);
      return new Piece(first.course, first.main, all);
    }
  }

  PlaceMaker(String plane, Outline outline, OldJoints.Plain old) {
    this.plane = plane;
    this.outline = outline;
    this.old = old;
    Box bounds = outline.bounds();
    lines.add(bounds.bottom());
    for (double y = bounds.bottom() + old.firstCourse();
        y < bounds.top() - HAIR;
        y += LayoutRules.MODULE_WIDTH) {
      lines.add(y);
    }
    lines.add(bounds.top());
    if (courses() > MOST_COURSES) {
      throw new RefusedException(
          Shown.text(
              "the plane is %.0f in high, more than 200 courses; give lengths in feet or inches as they are",
              bounds.height()));
    }
  }

  private int courses() {
    return lines.size() - 1;
  }

  /**
   * A joint, if the plane has its course.
   *
   * @throws RefusedException with how many it has
   */
  MeasuredJoint.Plain withCourse(MeasuredJoint.Plain joint) {
    if (joint.course() < 1 || joint.course() > courses()) {
      throw new RefusedException(
          "course is %s, but plane %s has %s, counted from its lowest point"
              .formatted(joint.course(), plane, courses()));
    }
    return joint;
  }

  /**
   * A joint, if it lies in its course.
   *
   * @throws RefusedException with how far the course reaches
   */
  MeasuredJoint.Plain onItsCourse(MeasuredJoint.Plain joint) {
    Box bounds = outline.bounds();
    Box reach =
        outline.within(slot(joint.course(), bounds.left(), bounds.right())).stream()
            .map(Region::bounds)
            .reduce(Box::with)
            .orElseThrow();
    if (joint.along() <= reach.left() || joint.along() >= reach.right()) {
      throw new RefusedException(
          "joint_in is %s, but course %s of plane %s goes from %s to %s in; measure from the plane's lower left corner"
              .formatted(
                  Shown.plain(joint.along()),
                  joint.course(),
                  plane,
                  Shown.plain(reach.left()),
                  Shown.plain(reach.right())));
    }
    return joint;
  }

  private Box slot(int course, double left, double right) {
    return new Box(left, lines.get(course - 1), right, lines.get(course));
  }

  /** The places from the eave up, from the left. */
  List<Place> places() {
    List<Joints> joints = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    for (int course = 1; course <= courses(); course++) {
      joints.add(joints(course));
      pieces.addAll(pieces(course, joints.get(course - 1).between()));
    }
    List<Piece> large = joined(pieces);
    large.sort(
        Comparator.comparingInt(Piece::course)
            .thenComparingDouble(piece -> piece.main().bounds().left())
            .thenComparingDouble(piece -> piece.main().bounds().bottom()));
    List<Place> places = new ArrayList<>();
    int number = 0;
    int course = 0;
    for (Piece piece : large) {
      number = piece.course() == course ? number + 1 : 1;
      course = piece.course();
      List<Piece> split = split(piece, joints.get(course - 1).splitting());
      for (int i = 0; i < split.size(); i++) {
        String letter = split.size() == 1 ? "" : String.valueOf((char) ('a' + i));
        places.add(place(new PlaceKey(plane, course, number, letter), split.get(i)));
      }
    }
    return List.copyOf(places);
  }

  private static Place place(PlaceKey key, Piece piece) {
    List<Region> parts = new ArrayList<>(List.of(piece.main()));
    piece.parts().stream().filter(part -> part != piece.main()).forEach(parts::add);
    return new Place(key, List.copyOf(parts));
  }

  private Joints joints(int course) {
    Box bounds = outline.bounds();
    List<Double> between = old.joints(course, bounds.left(), bounds.right());
    List<Double> assumed = List.copyOf(between);
    List<Double> splitting = new ArrayList<>();
    List<Double> measured =
        old.measured().stream()
            .filter(joint -> joint.course() == course)
            .map(MeasuredJoint.Plain::along)
            .sorted(Comparator.comparingDouble(x -> Math.abs(assumed.get(nearest(assumed, x)) - x)))
            .toList();
    for (double along : measured) {
      int nearest = nearest(assumed, along);
      boolean isMoved =
          between.get(nearest).equals(assumed.get(nearest))
              && Math.abs(assumed.get(nearest) - along) < SAME_JOINT
              && keepsEveryPlace(course, between, nearest, along);
      if (isMoved) {
        between.set(nearest, along);
      } else {
        splitting.add(along);
      }
    }
    return new Joints(between, splitting);
  }

  private static int nearest(List<Double> joints, double along) {
    int nearest = 0;
    for (int i = 1; i < joints.size(); i++) {
      if (Math.abs(joints.get(i) - along) < Math.abs(joints.get(nearest) - along)) {
        nearest = i;
      }
    }
    return nearest;
  }

  /** Whether as many places lie on each side of a joint when it is moved. */
  private boolean keepsEveryPlace(int course, List<Double> joints, int which, double along) {
    List<Double> moved = new ArrayList<>(joints);
    moved.set(which, along);
    return countBeside(course, joints, which).equals(countBeside(course, moved, which));
  }

  private List<Long> countBeside(int course, List<Double> joints, int which) {
    List<Long> counts = new ArrayList<>();
    for (int i = Math.max(0, which - 1); i < Math.min(joints.size() - 1, which + 1); i++) {
      Box slot = slot(course, joints.get(i), joints.get(i + 1));
      counts.add(outline.within(slot).stream().filter(part -> part.area() >= SMALLEST).count());
    }
    return counts;
  }

  private List<Piece> pieces(int course, List<Double> joints) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < joints.size(); i++) {
      for (Region part : outline.within(slot(course, joints.get(i), joints.get(i + 1)))) {
        pieces.add(Piece.of(course, part));
      }
    }
    return pieces;
  }

  /** The parts of a piece between the joints that split it, from the left. */
  private List<Piece> split(Piece piece, List<Double> splitting) {
    Box bounds = piece.main().bounds();
    List<Double> cuts = new ArrayList<>(List.of(bounds.left()));
    splitting.stream()
        .filter(x -> x > bounds.left() && x < bounds.right())
        .sorted()
        .forEach(cuts::add);
    cuts.add(bounds.right());
    if (cuts.size() == 2) {
      return List.of(piece);
    }
    List<Piece> parts = new ArrayList<>();
    Outline alone = piece.main().outline();
    for (int i = 0; i + 1 < cuts.size(); i++) {
      for (Region part : alone.within(slot(piece.course(), cuts.get(i), cuts.get(i + 1)))) {
        parts.add(Piece.of(piece.course(), part));
      }
    }
    piece.parts().stream()
        .filter(part -> part != piece.main())
        .forEach(part -> parts.add(Piece.of(piece.course(), part)));
    List<Piece> joined = joined(parts);
    joined.sort(
        Comparator.comparingDouble((Piece each) -> each.main().bounds().left())
            .thenComparingDouble(each -> each.main().bounds().bottom()));
    return joined;
  }

  /**
   * What is too small joined, the smallest first, to the neighbor with the longest joint, the
   * larger of two.
   */
  private static List<Piece> joined(List<Piece> pieces) {
    List<Piece> left = new ArrayList<>(pieces);
    List<Piece> small = new ArrayList<>(pieces);
    small.removeIf(piece -> piece.area() >= SMALLEST);
    while (!small.isEmpty()) {
      Piece least = small.stream().min(Comparator.comparingDouble(Piece::area)).orElseThrow();
      small.remove(least);
      left.stream()
          .filter(other -> other != least && other.sharedSide(least) > HAIR)
          .max(
              Comparator.comparingDouble((Piece other) -> other.sharedSide(least))
                  .thenComparingDouble(Piece::area))
          .ifPresent(
              neighbor -> {
                Piece both = neighbor.with(least);
                left.remove(least);
                left.set(left.indexOf(neighbor), both);
                if (small.remove(neighbor) && both.area() < SMALLEST) {
                  small.add(both);
                }
              });
    }
    return left;
  }
}
