package sheathwright.sheathing.patch;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.roof.Box;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceMap;

/**
 * A place on a plane where something was found.
 *
 * @param key what it is called on the deck, in the photographs and in the change order
 * @param found what is wrong
 * @param sheet the key of the place that it lies in, if that was told
 * @param isWhole whether that place is marked as it is, without measures of its own
 * @param along from the plane's left corner to its left side, along the eave
 * @param up from the eave to its lower side
 * @param width along the eave
 * @param height up the slope
 * @param action what is done about it, where that was decided; else what was found says it
 */
public record Mark(
    String key,
    Choice<Finding> found,
    Optional<Choice<String>> sheet,
    boolean isWhole,
    Figure<Length> along,
    Figure<Length> up,
    Figure<Length> width,
    Figure<Length> height,
    Optional<Choice<String>> action) {

  private static final String SHEET = "sheet";
  private static final String CUT_OUT = "replace";

  /** A mark about which nobody has decided. */
  private Mark(
      String key,
      Choice<Finding> found,
      Optional<Choice<String>> sheet,
      boolean isWhole,
      Figure<Length> along,
      Figure<Length> up,
      Figure<Length> width,
      Figure<Length> height) {
    this(key, found, sheet, isWhole, along, up, width, height, Optional.empty());
  }

  /** A rectangle that was found to be bad. */
  public static Mark of(
      String key,
      OneOf<Finding> finding,
      Figure<Length> along,
      Figure<Length> up,
      Figure<Length> width,
      Figure<Length> height) {
    Mark mark = new Mark(key, finding.choice(), Optional.empty(), false, along, up, width, height);
    Box box = mark.seen(Reading.aside()).box();
    if (box.width() <= 0 || box.height() <= 0) {
      throw new RefusedException(
          "%s is %s by %s; both must be more than 0, from its left and its lower side"
              .formatted(("mark " + key).strip(), width, height),
          List.of(width, height));
    }
    return mark;
  }

  /**
   * A whole place of the old deck that was found to be bad.
   *
   * @param sheet its key, such as {@code A-3-5}
   * @throws RefusedException if the map has no such place
   */
  public static Mark of(String key, OneOf<Finding> finding, PlaceMap map, OneOf<String> sheet) {
    PlaceMap.Measures at = map.measures(map.place(Reading.aside(), SHEET, sheet));
    return new Mark(
        key,
        finding.choice(),
        Optional.of(sheet.choice()),
        true,
        at.along(),
        at.up(),
        at.width(),
        at.height());
  }

  /**
   * The same mark, known to lie in one place.
   *
   * @throws RefusedException if its measures reach into another
   */
  public Mark in(PlaceMap map, OneOf<String> sheet) {
    Reading aside = Reading.aside();
    Place told = map.place(aside, SHEET, sheet);
    List<Place> touched = map.touchedBy(aside, seen(aside).box());
    if (!touched.equals(List.of(told))) {
      throw new RefusedException(
          "sheet is %s, but what was measured lies in %s; give one of the two, or measure again"
              .formatted(
                  told.key(),
                  touched.stream().map(place -> place.key().toString()).collect(joining(" and "))),
          List.of(sheet.choice()));
    }
    return new Mark(key, found, Optional.of(sheet.choice()), false, along, up, width, height);
  }

  /** The same mark under a key, if it has none of its own. */
  public Mark called(String name) {
    return key.isEmpty()
        ? new Mark(name, found, sheet, isWhole, along, up, width, height, action)
        : this;
  }

  /**
   * The same mark, about which somebody decided.
   *
   * @param done what is done: it is cut out if that is {@code replace}
   */
  public Mark decided(OneOf<String> done) {
    return new Mark(
        key, found, sheet, isWhole, along, up, width, height, Optional.of(done.choice()));
  }

  /** The places that it lies in, those that it names alone. */
  public List<Place> places(Reading reading, PlaceMap map) {
    return places(reading, map, seen(reading));
  }

  static List<Place> places(Reading reading, PlaceMap map, Seen seen) {
    return seen.whole().isEmpty()
        ? map.touchedBy(reading, seen.box())
        : map.places(reading).stream()
            .filter(place -> place.key().toString().equals(seen.whole()))
            .toList();
  }

  /**
   * A cell of the grid that supports and courses make.
   *
   * @param bay between two supports, counted from the left, beginning with 1
   * @param course from the eave, beginning with 1
   */
  public static Mark cell(
      String key, OneOf<Finding> finding, Supports supports, int bay, int course) {
    List<Double> centers = supports.centers(Reading.aside()).between(-1, 1e5);
    if (bay < 1 || bay >= centers.size() || course < 1) {
      throw new RefusedException(
          "mark %s is in bay %s, course %s; both are counted from 1, bays from the left and courses from the eave"
              .formatted(key, bay, course));
    }
    double left = centers.get(bay - 1);
    return of(
        key,
        finding,
        Figure.of(left, Units.INCH),
        Figure.of((course - 1) * LayoutRules.MODULE_WIDTH, Units.INCH),
        Figure.of(centers.get(bay) - left, Units.INCH),
        Figure.of(LayoutRules.MODULE_WIDTH, Units.INCH));
  }

  /**
   * A mark as plain values.
   *
   * @param key what it is called
   * @param finding what is wrong there
   * @param box where it is, in inches
   * @param whole the key of the place that is marked as a whole; else empty
   * @param isCutOut whether its wood is replaced
   */
  public record Seen(String key, Finding finding, Box box, String whole, boolean isCutOut) {}

  /** What was found, read. */
  public Seen seen(Reading reading) {
    String mark = "mark " + key;
    String told = sheet.map(each -> reading.word(mark + ", sheet", each)).orElse("");
    Finding finding = reading.word(mark + ", what was found", found);
    return new Seen(
        key,
        finding,
        Box.at(
            reading.number(mark + ", along the eave", along, Units.INCH),
            reading.number(mark + ", up the slope", up, Units.INCH),
            reading.number(mark + ", width", width, Units.INCH),
            reading.number(mark + ", height", height, Units.INCH)),
        isWhole ? told.strip() : "",
        action
            .map(done -> reading.word(mark + ", what is done", done).equals(CUT_OUT))
            .orElse(finding.isCutOut()));
  }

  @Override
  public String toString() {
    return "%s, %s, %s%s along and %s up, %s by %s"
        .formatted(
            ("mark " + key).strip(),
            found,
            sheet.map(each -> each + ", ").orElse(""),
            along,
            up,
            width,
            height);
  }
}
