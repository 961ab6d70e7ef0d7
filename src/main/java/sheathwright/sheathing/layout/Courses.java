package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Narrowed;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.roof.PlaneSize;

/** Sheets laid in courses from the eave to the ridge. */
public final class Courses {

  private static final Source SHEET = Source.derived("4 ft by 8 ft sheet");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Length> NO_STRIP = Figure.of(0, Units.FOOT);
  private static final Figure<Length> TWO_FEET = Figure.of(2, Units.FOOT);
  private static final Figure<Length> SHEET_WIDTH =
      Figure.constant("sheet_width_ft", 4, Units.FOOT, SHEET).symbol("4 ft");
  private static final Figure<Length> SHEET_LENGTH =
      Figure.constant("sheet_length_ft", 8, Units.FOOT, SHEET).symbol("8 ft");

  private static final double LEAST_EAVE = 1;
  private static final double MOST_EAVE = 500;
  private static final String ALONG = "along the eave";

  private Courses() {}

  /**
   * How many 4 by 8 sheets a rectangular plane takes when they are laid in courses from the eave,
   * and how high the course at the ridge is.
   *
   * <pre>
   * whole courses = ⌊slope length ÷ 4 ft⌋, strip r = what they leave
   * rip      : ⌈whole × eave ÷ 8 ft⌉ + ⌈(eave ÷ 8 ft) ÷ ⌊4 ft ÷ r⌋⌉
   * equal    : one whole course fewer, and ⌈2 × eave ÷ 8 ft⌉ for two courses of (4 ft + r) ÷ 2
   * two-foot : one whole course fewer, ⌈eave ÷ 8 ft⌉ for a course of 2 ft + r, ⌈(eave ÷ 8 ft) ÷ 2⌉ for one of 2 ft
   * </pre>
   *
   * <p>Does not cover gaps and saw kerfs, hips and valleys, openings, or where the ends land;
   * offcuts are used again only within their own group of equal courses.
   *
   * <p>The rules equal and two-foot act only on a strip of less than two feet above at least one
   * whole course; else the strip is ripped. The two-foot course lies at the ridge.
   *
   * <pre>{@code
   * sheetsByCourse(PlaneSize.eave(ft(42)).slope(ft("16-9 1/4")), RIP, in(24)).sheets() // 23 sheets
   * sheetsByCourse(PlaneSize.eave(ft(42)).slope(ft("16-9 1/4")), TWO_FOOT, in(24)).sheets() // 25 sheets
   * }</pre>
   *
   * @param plane its size; no eave under 1 ft
   * @param stripRule what is done with the strip at the ridge
   * @param minStrip a course at the ridge lower than this is narrow, 1 in to 48 in
   * @return whole sheets, height of the course at the ridge in inches, and whether it is narrow
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: arithmetic on 4 by 8 sheets; the least strip of 24 in is
   *     panel certification advice, secondary source"
   */
  @LibraryFunction(words = {"lay sheets", "rip", "strip at the ridge", "cut list"})
  public static CourseCount sheetsByCourse(
      @Narrowed(column = "eave_ft", least = LEAST_EAVE, most = MOST_EAVE, rule = ALONG)
          PlaneSize plane,
      @Column("strip_rule") OneOf<StripRule> stripRule,
      @Column(value = "min_strip_in", preset = "24") Figure<Length> minStrip) {
    var along =
        plane.eave().within("eave_ft", Units.FOOT, Limits.between(LEAST_EAVE, MOST_EAVE, ALONG));
    var up = plane.slope();
    var least = minStrip.within("min_strip_in", Units.INCH, Limits.between(1, 48, "24 is usual"));
    Choice<StripRule> rule = stripRule.choice().argument("strip_rule");

    var perCourse = along.dividedBy(SHEET_LENGTH).as("sheets_in_a_course", Units.RATIO);
    var whole =
        up.dividedBy(SHEET_WIDTH).in(Units.RATIO).roundedDown().as("whole_courses", Units.RATIO);
    var strip = up.minus(whole.times(SHEET_WIDTH)).max(NO_STRIP).as("strip_ft", Units.FOOT, SHEET);

    Condition hasStrip = strip.isMoreThan(NO_STRIP);
    var replaced =
        Figure.choose(
                Condition.all(
                    hasStrip,
                    strip.isLessThan(TWO_FEET),
                    whole.isAtLeast(ONE),
                    Condition.any(rule.is(StripRule.EQUAL), rule.is(StripRule.TWO_FOOT))),
                ONE,
                NONE)
            .as("courses_replaced", Units.RATIO);
    Condition isReplaced = replaced.isMoreThan(NONE);
    Condition isEqual = rule.is(StripRule.EQUAL);

    var ripped =
        Figure.choose(
                hasStrip,
                perCourse
                    .dividedBy(SHEET_WIDTH.dividedBy(strip).in(Units.RATIO).roundedDown())
                    .in(Units.RATIO)
                    .roundedUp(),
                NONE)
            .as("sheets_ripped", Units.RATIO);
    var twoCourses =
        Figure.choose(
                isEqual,
                TWO.times(perCourse).in(Units.RATIO).roundedUp(),
                perCourse.roundedUp().plus(perCourse.dividedBy(TWO).in(Units.RATIO).roundedUp()))
            .as("sheets_in_two_courses", Units.RATIO);
    var atTheRidge =
        Figure.choose(isReplaced, twoCourses, ripped).as("sheets_at_the_ridge", Units.RATIO);
    var sheets =
        whole
            .minus(replaced)
            .times(perCourse)
            .in(Units.RATIO)
            .roundedUp()
            .plus(atTheRidge)
            .counting(Units.SHEET)
            .as("sheets", Units.SHEET, SHEET);

    var leftOver = Figure.choose(hasStrip, strip, SHEET_WIDTH).as("left_over_ft", Units.FOOT);
    var divided =
        Figure.choose(isEqual, SHEET_WIDTH.plus(strip).dividedBy(TWO).in(Units.FOOT), TWO_FEET)
            .as("divided_course_ft", Units.FOOT);
    var last = Figure.choose(isReplaced, divided, leftOver).as("last_course_in", Units.INCH, SHEET);
    return new CourseCount(sheets, last, last.isLessThan(least).as("narrow"));
  }
}
