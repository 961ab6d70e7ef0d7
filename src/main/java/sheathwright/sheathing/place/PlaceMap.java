package sheathwright.sheathing.place;

import static java.util.Comparator.comparingInt;
import static java.util.stream.Collectors.joining;
import static sheathwright.sheathing.layout.LayoutRules.HAIR;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
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
import sheathwright.roof.Region;

/** The places of one plane of an old deck, each with its key. */
public final class PlaceMap {

  private static final int NEAREST = 3;
  private static final double TAPE = 1;
  private static final Source ON_THE_MAP = Source.derived("read off the map of the old deck");

  private final Plane plane;
  private final OldJoints joints;
  private final Reading reading;
  private final List<Place> places;
  private final Solution solution;
  private final SheetUnits units;
  private final Optional<Figure<Length>> board;

  /** Where a place lies, gaps included. */
  public record Measures(
      Figure<Length> along, Figure<Length> up, Figure<Length> width, Figure<Length> height) {}

  private PlaceMap(Plane plane, OldJoints joints) {
    this.plane = plane;
    this.joints = joints;
    this.reading = new Reading();
    OldJoints.Plain old = joints.plain(reading, plane.name());
    PlaceMaker maker = new PlaceMaker(plane.name(), plane.outline(reading), old);
    check(maker, old);
    this.places = maker.places();
    this.solution = reading.solution("map_of_" + plane.name());
    this.units =
        SheetUnits.of(solution, "on_" + plane.name(), places.stream().map(Place::area).toList());
    this.board = Optional.empty();
  }

  private PlaceMap(Plane plane, Figure<Length> board) {
    this.plane = plane;
    this.joints = OldJoints.ASSUMED;
    this.reading = new Reading();
    reading.number("what one board covers on " + plane.name(), board, Units.INCH);
    plane.outline(reading);
    this.places = List.of();
    this.solution = reading.solution("map_of_" + plane.name());
    this.units = SheetUnits.of(solution, "on_" + plane.name(), List.of());
    this.board = Optional.of(board);
  }

  private PlaceMap(PlaceMap map, Reading reading) {
    this.plane = map.plane;
    this.joints = map.joints;
    this.reading = reading;
    this.places = map.places;
    this.solution = map.solution;
    this.units = map.units;
    this.board = map.board;
  }

  /**
   * The same map, which rests on this as well: on which lines of a table tell of its marks.
   *
   * @param label what that is called when it has changed
   */
  public PlaceMap restingOn(String label, Choice<String> state) {
    Reading more = new Reading().and(reading);
    more.word(label, state);
    return new PlaceMap(this, more);
  }

  /**
   * The map of a plane.
   *
   * @throws RefusedException if a measured joint lies off the plane
   */
  public static PlaceMap of(Plane plane, OldJoints joints) {
    return new PlaceMap(plane, joints);
  }

  /**
   * The map of a plane whose deck is boards: it has no places.
   *
   * @param board what one of them covers up the slope
   */
  public static PlaceMap ofBoards(Plane plane, Figure<Length> board) {
    return new PlaceMap(plane, board);
  }

  private void check(PlaceMaker maker, OldJoints.Plain old) {
    for (int i = 0; i < old.measured().size(); i++) {
      MeasuredJoint told = joints.measured().get(i);
      MeasuredJoint.Plain joint = old.measured().get(i);
      RefusedException.solvedFor(List.of(told.course()), () -> maker.withCourse(joint));
      RefusedException.solvedFor(List.of(told.along()), () -> maker.onItsCourse(joint));
    }
  }

  /** The plane. */
  public Plane plane() {
    return plane;
  }

  /** What one board covers up the slope, where the deck is boards; it has no places then. */
  public Optional<Figure<Length>> board() {
    return board;
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

  /** Whether a place of the plane has this key. */
  public boolean has(String key) {
    return places.stream().anyMatch(place -> place.key().toString().equals(key));
  }

  private String missing(String text) {
    if (board.isPresent()) {
      return "sheet is \"%s\", but the deck of plane %s is boards and has no places; say where by measure"
          .formatted(text, plane.name());
    }
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

  /**
   * The places that a measured rectangle lies in. A tape is read to an inch, so that one which
   * reaches less far over a joint ends at it.
   */
  public List<Place> touchedBy(Reading solving, Box box) {
    double across = Math.min(TAPE + HAIR, box.width() / 2 - HAIR);
    double up = Math.min(TAPE + HAIR, box.height() / 2 - HAIR);
    List<Place> met =
        places(solving).stream().filter(place -> !place.within(box).isEmpty()).toList();
    List<Place> touched =
        met.stream()
            .filter(
                place ->
                    place.within(box).stream()
                        .map(Region::bounds)
                        .anyMatch(part -> part.width() > across && part.height() > up))
            .toList();
    return touched.isEmpty() ? met : touched;
  }

  /** Where a place lies, as the map has it. */
  public Measures measures(Place place) {
    Box box = place.bounds();
    return new Measures(
        inches(box.left()), inches(box.bottom()), inches(box.width()), inches(box.height()));
  }

  private Figure<Length> inches(double inches) {
    return solution.figure("", inches, Units.INCH, ON_THE_MAP);
  }

  /** Its places and what is known of their joints. */
  @Override
  public String toString() {
    if (board.isPresent()) {
      return "%s, boards of %s".formatted(plane, board.get());
    }
    return "%s places on %s, joints %s"
        .formatted(places.size(), plane, joints.areAssumed() ? "assumed" : "measured");
  }
}
