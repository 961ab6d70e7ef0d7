package sheathwright.sheathing.place;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.sheathing.layout.LayoutRules;

/**
 * How the sheets of an old plane are taken to lie. Each part can be changed by the method of its
 * name, which gives the joints anew.
 *
 * @param first where a joint of the first course lies, from the plane's left corner; joints lie
 *     every 96 in from there, to the left as well
 * @param stagger how far the joints of every other course are shifted
 * @param firstCourse how high the first course is; the others are 48 in
 * @param measured joints that somebody measured
 */
public record OldJoints(
    Figure<Length> first,
    Figure<Length> stagger,
    Figure<Length> firstCourse,
    List<MeasuredJoint> measured) {

  /** As nobody has measured them: whole sheets from the left corner, shifted by half a sheet. */
  public static final OldJoints ASSUMED =
      new OldJoints(
          assumed("joint_in", LayoutRules.MODULE_LENGTH),
          assumed("stagger_in", LayoutRules.MODULE_LENGTH / 2),
          assumed("first_course_in", LayoutRules.MODULE_WIDTH),
          List.of());

  private static Figure<Length> assumed(String name, double inches) {
    return Figure.constant(name, inches, Units.INCH, Source.COMMON_PRACTICE);
  }

  public OldJoints first(Figure<Length> inches) {
    return new OldJoints(inches, stagger, firstCourse, measured);
  }

  public OldJoints stagger(Figure<Length> inches) {
    return new OldJoints(first, inches, firstCourse, measured);
  }

  public OldJoints firstCourse(Figure<Length> inches) {
    return new OldJoints(first, stagger, inches, measured);
  }

  public OldJoints measured(List<MeasuredJoint> joints) {
    return new OldJoints(first, stagger, firstCourse, List.copyOf(joints));
  }

  /** Whether nobody has measured any of it. */
  public boolean areAssumed() {
    return first == ASSUMED.first && measured.isEmpty();
  }

  /** As plain values, in inches. */
  record Plain(
      double first, double stagger, double firstCourse, List<MeasuredJoint.Plain> measured) {

    /** Where the joints of a course are taken to lie, over and beyond its extent. */
    List<Double> joints(int course, double left, double right) {
      double start = first + (course % 2 == 0 ? stagger : 0);
      double module = LayoutRules.MODULE_LENGTH;
      List<Double> joints = new ArrayList<>();
      for (long slot = (long) Math.floor((left - start) / module);
          joints.isEmpty() || joints.get(joints.size() - 1) < right;
          slot++) {
        joints.add(start + slot * module);
      }
      return joints;
    }
  }

  Plain plain(Reading reading, String plane) {
    List<MeasuredJoint.Plain> joints = new ArrayList<>();
    for (MeasuredJoint joint : measured) {
      joints.add(joint.plain(reading, "joint " + (joints.size() + 1) + " of " + plane));
    }
    return new Plain(
        reading.number("first old joint of " + plane, first, Units.INCH),
        reading.number("shift of the old courses of " + plane, stagger, Units.INCH),
        reading.number("first old course of " + plane, firstCourse, Units.INCH),
        joints);
  }
}
