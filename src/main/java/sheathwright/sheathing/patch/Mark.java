package sheathwright.sheathing.patch;

import java.util.List;
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

/**
 * A place on a plane where something was found.
 *
 * @param key what it is called on the deck, in the photographs and in the change order
 * @param found what is wrong
 * @param along from the plane's left corner to its left side, along the eave
 * @param up from the eave to its lower side
 * @param width along the eave
 * @param height up the slope
 */
public record Mark(
    String key,
    Choice<Finding> found,
    Figure<Length> along,
    Figure<Length> up,
    Figure<Length> width,
    Figure<Length> height) {

  /** A rectangle that was found to be bad. */
  public static Mark of(
      String key,
      OneOf<Finding> finding,
      Figure<Length> along,
      Figure<Length> up,
      Figure<Length> width,
      Figure<Length> height) {
    Mark mark = new Mark(key, finding.choice(), along, up, width, height);
    Box box = mark.seen(Reading.aside()).box();
    if (box.width() <= 0 || box.height() <= 0) {
      throw new RefusedException(
          "%s is %s by %s; both must be more than 0, from its left and its lower side"
              .formatted(("mark " + key).strip(), width, height),
          List.of(width, height));
    }
    return mark;
  }

  /** The same mark under a key, if it has none of its own. */
  public Mark called(String name) {
    return key.isEmpty() ? new Mark(name, found, along, up, width, height) : this;
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
          "mark %s is in bay %d, course %d; both are counted from 1, bays from the left and courses from the eave"
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
   */
  public record Seen(String key, Finding finding, Box box) {}

  /** What was found, read. */
  public Seen seen(Reading reading) {
    String mark = "mark " + key;
    return new Seen(
        key,
        reading.word(mark + ", what was found", found),
        Box.at(
            reading.number(mark + ", along the eave", along, Units.INCH),
            reading.number(mark + ", up the slope", up, Units.INCH),
            reading.number(mark + ", width", width, Units.INCH),
            reading.number(mark + ", height", height, Units.INCH)));
  }

  @Override
  public String toString() {
    return "%s, %s, %s along and %s up, %s by %s"
        .formatted(("mark " + key).strip(), found, along, up, width, height);
  }
}
