package sheathwright.life.found;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import sheathwright.roof.Box;
import sheathwright.sheathing.place.Place;

/**
 * Where a mark lies among the places of its plane: in which, and at which of their joints. A joint
 * belongs to the place on its left or below it.
 *
 * @param box that was marked, in inches
 * @param isMeasured whether it was measured; else a place is marked as a whole
 * @param touched the places that it lies in
 * @param all the places of the plane
 */
record MarkReach(Box box, boolean isMeasured, List<Place> touched, List<Place> all) {

  private static final double HAIR = 1;

  /**
   * A joint between two sheets.
   *
   * @param name what it is told apart by
   * @param place that it belongs to
   * @param inches that it is long
   */
  record Joint(String name, Place place, double inches) {}

  /** The place in which most of it lies. */
  Place main() {
    return touched.stream()
        .max(Comparator.comparingDouble((Place place) -> common(place, box)))
        .orElseThrow();
  }

  private static double common(Place place, Box box) {
    return place.within(box).stream().mapToDouble(part -> part.area()).sum();
  }

  /** Whether it is taller than wide, as a mark along the ends of sheets is. */
  boolean isUpright() {
    return box.height() > box.width();
  }

  /** The end joints at which it lies, one a course. */
  List<Joint> ends() {
    if (!isMeasured) {
      return List.of(end(main()));
    }
    Map<Integer, List<Place>> byCourse = new TreeMap<>();
    touched.forEach(
        place ->
            byCourse.computeIfAbsent(place.key().course(), course -> new ArrayList<>()).add(place));
    return byCourse.values().stream().map(this::nearestEnd).toList();
  }

  private Joint nearestEnd(List<Place> inACourse) {
    double x =
        nearest(
            box.middleX(),
            inACourse.stream()
                .flatMapToDouble(
                    place -> DoubleStream.of(place.bounds().left(), place.bounds().right())));
    int course = inACourse.get(0).key().course();
    return end(
        all.stream()
            .filter(place -> place.key().course() == course)
            .filter(place -> Math.abs(place.bounds().right() - x) < HAIR)
            .findFirst()
            .orElse(inACourse.get(0)));
  }

  /** The long joints at which it lies, one for each place below it. */
  List<Joint> edges() {
    if (!isMeasured) {
      return List.of(edge(main()));
    }
    double y =
        nearest(
            box.middleY(),
            touched.stream()
                .flatMapToDouble(
                    place -> DoubleStream.of(place.bounds().bottom(), place.bounds().top())));
    List<Joint> edges =
        all.stream()
            .filter(place -> Math.abs(place.bounds().top() - y) < HAIR)
            .filter(place -> inCommon(place.bounds()) > Math.min(HAIR, box.width() / 2))
            .map(MarkReach::edge)
            .toList();
    return edges.isEmpty() ? List.of(edge(main())) : edges;
  }

  /** How far a place and the mark lie above each other along the eave. */
  private double inCommon(Box place) {
    return Math.min(place.right(), box.right()) - Math.max(place.left(), box.left());
  }

  private static double nearest(double to, DoubleStream of) {
    return of.boxed().min(Comparator.comparingDouble(each -> Math.abs(each - to))).orElseThrow();
  }

  /**
   * The joint that a place marked as a whole is meant by: its right end, or else its upper edge.
   */
  Joint ofThePlace() {
    Place place = main();
    return besides(place).isPresent() ? end(place) : edge(place);
  }

  private Optional<Place> besides(Place place) {
    return all.stream()
        .filter(other -> other.key().course() == place.key().course())
        .filter(other -> Math.abs(other.bounds().left() - place.bounds().right()) < HAIR)
        .findFirst();
  }

  private static Joint end(Place place) {
    return new Joint("right of " + place.key(), place, place.bounds().height());
  }

  private static Joint edge(Place place) {
    return new Joint("above " + place.key(), place, place.bounds().width());
  }

  /** The joints at which it lies, by its shape. */
  List<Joint> joints() {
    if (!isMeasured) {
      return List.of(ofThePlace());
    }
    return isUpright() ? ends() : edges();
  }
}
