package sheathwright.sheathing.place;

import static java.util.Comparator.comparingInt;
import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;

/** The places of one plane of an old deck, each with its key. */
public final class PlaceMap {

  private static final int NEAREST = 3;
  private static final Source ON_THE_MAP = Source.derived("read off the map of the old deck");

  private final Plane plane;
  private final OldJoints joints;
  private final Reading reading = new Reading();
  private final List<Place> places;
  private final Solution solution;
  private final SheetUnits units;

  /** Where a place lies, gaps included. */
  public record Measures(
      Figure<Length> along, Figure<Length> up, Figure<Length> width, Figure<Length> height) {}

  private PlaceMap(Plane plane, OldJoints joints) {
    this.plane = plane;
    this.joints = joints;
    PlaceMaker maker =
        new PlaceMaker(plane.name(), plane.outline(reading), joints.plain(reading, plane.name()));
    joints.measured().forEach(joint -> check(maker, joint));
    this.places = maker.places();
    this.solution = reading.solution("map_of_" + plane.name());
    this.units =
        SheetUnits.of(
            solution, "on_" + plane.name(), places.stream().map(Place::area).toList());
  }

  /**
   * The map of a plane.
   *
   * @throws RefusedException if a measured joint lies off the plane
   */
  public static PlaceMap of(Plane plane, OldJoints joints) {
    return new PlaceMap(plane, joints);
  }

  private void check(PlaceMaker maker, MeasuredJoint joint) {
    Reading aside = Reading.aside();
    int course = (int) aside.number("course", joint.course(), Units.RATIO);
    if (course < 1 || course > maker.courses()) {
      throw new RefusedException(
          "course is %d, but plane %s has %d, counted from its lowest point"
              .formatted(course, plane.name(), maker.courses()),
          List.of(joint.course()));
    }
    Box reach = maker.reach(course);
    double along = aside.number("joint", joint.along(), Units.INCH);
    if (along <= reach.left() || along >= reach.right()) {
      throw new RefusedException(
          "joint_in is %s, but course %d of plane %s goes from %s to %s in; measure from the plane's lower left corner"
              .formatted(
                  joint.along().plain(),
                  course,
                  plane.name(),
                  Figure.of(reach.left(), Units.INCH).plain(),
                  Figure.of(reach.right(), Units.INCH).plain()),
          List.of(joint.along()));
    }
  }

  /** The plane. */
  public Plane plane() {
    return plane;
  }

  /** How its sheets are taken to lie. */
  public OldJoints joints() {
    return joints;
  }

  /** The places from the eave up, from the left. */
  public List<Place> places(Reading solving) {
    solving.and(reading);
    return places;
  }

  /** What all of them count. */
  public SheetUnits units() {
    return units;
  }

  /**
   * The place of a key.
   *
   * @param label what the key is called when it has changed
   * @param key as it stands in a table
   * @throws RefusedException if the plane has no such place, with those nearest to it
   */
  public Place place(Reading solving, String label, OneOf<String> key) {
    String text = solving.word(label, key).strip();
    List<Place> known = places(solving);
    return known.stream()
        .filter(place -> place.key().toString().equals(text))
        .findFirst()
        .orElseThrow(() -> new RefusedException(missing(text), List.of(key.choice())));
  }

  private String missing(String text) {
    Optional<PlaceKey> key = PlaceKey.read(text);
    if (key.isEmpty()) {
      return "sheet is \"%s\"; it must be plane, course from the eave and place from the left, such as %s"
          .formatted(text, places.get(0).key());
    }
    if (!key.get().plane().equals(plane.name())) {
      return "sheet is \"%s\", but the plane here is %s; give one of its places, such as %s"
          .formatted(text, plane.name(), places.get(0).key());
    }
    String near =
        places.stream()
            .map(Place::key)
            .sorted(comparingInt(each -> each.distance(key.get())))
            .limit(NEAREST)
            .map(PlaceKey::toString)
            .collect(joining(", "));
    return "sheet is \"%s\", but plane %s has no such place; the nearest are %s"
        .formatted(text, plane.name(), near);
  }

  /** Where a place lies, as the map has it. */
  public Measures measures(Place place) {
    Box box = place.bounds();
    return new Measures(
        inches("along_in", box.left()),
        inches("up_in", box.bottom()),
        inches("width_in", box.width()),
        inches("height_in", box.height()));
  }

  private Figure<Length> inches(String name, double inches) {
    return solution.figure(name, inches, Units.INCH, ON_THE_MAP);
  }

  /** Its places and what is known of their joints. */
  @Override
  public String toString() {
    return "%d places on %s, joints %s"
        .formatted(places.size(), plane, joints.areAssumed() ? "assumed" : "measured");
  }
}
