package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Where sheet ends meet. */
public final class Joints {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);
  private static final Figure<Length> ONE_INCH = Figure.of(1, Units.INCH);
  private static final Figure<Length> MODULE =
      Figure.constant("module_in", 96, Units.INCH, Source.derived("8 ft")).symbol("96 in");

  private Joints() {}

  /**
   * How much of a rafter each of two sheet ends stands on where they meet, and whether that is
   * enough.
   *
   * <pre>
   * left  = the lesser of joint and far face, less near face
   * right = far face less the greater of joint + gap and near face
   * </pre>
   *
   * <p>Does not cover split or crowned rafters, nails that miss, or scabs; measure the rafter as it
   * is, not as it was drawn.
   *
   * <pre>{@code
   * jointBearing(JointPlace.rafter(in("47-1/4")).joint(in(48)), USUAL_JOINT).ok() // no
   * jointBearing(JointPlace.rafter(in(48)).joint(in("47-15/16")), USUAL_JOINT).right() // 11/16 in
   * }</pre>
   *
   * @param place of rafter and joint
   * @param rules how sheet ends meet
   * @return inches of bearing left and right, and yes or no
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: half an inch of bearing each; the gap of 1/8 in is the panel
   *     makers' advice"
   */
  @LibraryFunction(words = {"butt joint", "sheet end", "off the rafter"})
  public static JointBearing jointBearing(JointPlace place, JointRules rules) {
    var width = rules.rafterWidth();
    var end = place.joint();
    var least = rules.minBearing();

    var near = place.rafter().minus(width.dividedBy(TWO)).as("near_face_in", Units.INCH);
    var far = near.plus(width).as("far_face_in", Units.INCH);
    var left =
        end.min(far).minus(near).max(NOTHING).as("left_in", Units.INCH, Source.COMMON_PRACTICE);
    var right =
        far.minus(end.plus(rules.gap()).max(near))
            .max(NOTHING)
            .as("right_in", Units.INCH, Source.COMMON_PRACTICE);
    return new JointBearing(
        left, right, Condition.all(left.isAtLeast(least), right.isAtLeast(least)).as("ok"));
  }

  /**
   * How many whole sheets can be laid, each with its gap, before a joint that began on the middle
   * of a rafter has crept so far that one sheet loses its bearing.
   *
   * <pre>
   * slack  = rafter width ÷ 2 − gap ÷ 2 − least bearing
   * creep  = |sheet length + gap − 96 in|
   * panels = ⌊slack ÷ creep⌋; no limit where nothing creeps
   * </pre>
   *
   * <p>Does not cover rafters that stand off the 8 ft module: check those joint by joint (see
   * {@code joint_bearing}). Sheets cut to length at every joint never creep.
   *
   * <pre>{@code
   * jointCreep(in("95-15/16"), USUAL_JOINT).panels() // 3 sheets
   * jointCreep(in("95-7/8"), USUAL_JOINT).panels() // no limit
   * }</pre>
   *
   * @param panelLength along the course, as measured, 90 in to 100 in
   * @param rules how sheet ends meet
   * @return whole sheets, or no limit
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: half an inch of bearing each; arithmetic on an 8 ft module"
   */
  @LibraryFunction(words = {"expansion gap", "spacing between sheets", "buckling"})
  public static JointCreep jointCreep(
      @Column("panel_length_in") Figure<Length> panelLength, JointRules rules) {
    var length =
        panelLength.within(
            "panel_length_in", Units.INCH, Limits.between(90, 100, "a 4 by 8 sheet has 96"));

    var slack =
        rules
            .rafterWidth()
            .minus(rules.gap())
            .dividedBy(TWO)
            .minus(rules.minBearing())
            .as("slack_in", Units.INCH, Source.COMMON_PRACTICE);
    var pitch = length.plus(rules.gap()).as("sheet_and_gap_in", Units.INCH);
    var creep = pitch.minus(MODULE).max(MODULE.minus(pitch)).as("creep_in", Units.INCH);
    var isOnTheModule = creep.isTheSameAs(NOTHING);
    var divisor = Figure.choose(isOnTheModule, ONE_INCH, creep).as("divisor_in", Units.INCH);
    var counted =
        slack.max(NOTHING).dividedBy(divisor).in(Units.RATIO).roundedDown().counting(Units.SHEET);
    var panels =
        Figure.choose(
                Condition.all(isOnTheModule, slack.isAtLeast(NOTHING)),
                Figure.none("no limit", Units.SHEET),
                counted)
            .as("panels", Units.SHEET, Source.COMMON_PRACTICE);
    return new JointCreep(panels);
  }
}
