package sheathwright.sheathing.layout;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How sheets are laid on a plane: 4 by 8 sheets in courses from the eave, long way across the
 * supports, every other course shifted along. Each rule can be changed by the method of its name,
 * which gives the rules anew.
 *
 * @param origin where a joint of the first course falls, from the plane's left corner
 * @param stagger how far every other course is shifted
 * @param stripRule what is done with a low strip at the ridge
 * @param minStrip a course lower than this is narrow
 * @param gap between sheets, inside the 48 by 96 in module; the saw cut is taken to be as wide
 * @param sheetLength of the sheets as measured, along the course; 96 in less the gap never creeps
 * @param supportWidth across the top of a support
 * @param minBearing least bearing of each sheet end
 * @param isLaid whether the sheets already lie there, so that a joint off its support can no longer
 *     be trimmed
 */
public record LayoutRules(
    Figure<Length> origin,
    Figure<Length> stagger,
    Choice<StripRule> stripRule,
    Figure<Length> minStrip,
    Figure<Length> gap,
    Figure<Length> sheetLength,
    Figure<Length> supportWidth,
    Figure<Length> minBearing,
    boolean isLaid) {

  /** Along the strength axis, gap included. */
  public static final double MODULE_LENGTH = 96;

  /** Up the slope, gap included. */
  public static final double MODULE_WIDTH = 48;

  /** Inches: what lies no farther apart than the finest mark of a tape lies on one line. */
  public static final double HAIR = 1.0 / 64;

  /**
   * The usual rules: from the left edge, shifted by 4 ft, strips ripped, gaps of 1/8 in, half an
   * inch of bearing; common practice, no source.
   */
  public static final LayoutRules USUAL =
      new LayoutRules(
          usual("origin_in", 0),
          usual("stagger_in", 48),
          Choice.literal(StripRule.RIP),
          usual("min_strip_in", 24),
          usual("gap_in", 0.125),
          usual("sheet_length_in", 95.875),
          usual("support_width_in", 1.5),
          usual("min_bearing_in", 0.5),
          false);

  private static Figure<Length> usual(String name, double inches) {
    return Figure.constant(name, inches, Units.INCH, Source.COMMON_PRACTICE);
  }

  public LayoutRules origin(Figure<Length> inches) {
    return new LayoutRules(
        inches, stagger, stripRule, minStrip, gap, sheetLength, supportWidth, minBearing, isLaid);
  }

  public LayoutRules stagger(Figure<Length> inches) {
    return new LayoutRules(
        origin, inches, stripRule, minStrip, gap, sheetLength, supportWidth, minBearing, isLaid);
  }

  public LayoutRules strips(OneOf<StripRule> rule) {
    return new LayoutRules(
        origin,
        stagger,
        rule.choice(),
        minStrip,
        gap,
        sheetLength,
        supportWidth,
        minBearing,
        isLaid);
  }

  /** The gap, with sheets shorter by as much than the module. */
  public LayoutRules gap(Figure<Length> inches) {
    double gap = Reading.aside().number("gap", inches, Units.INCH);
    if (gap < 0 || gap > 1) {
      throw new RefusedException(
          "the gap is %s; it must be from 0 to 1 in, 1/8 is usual".formatted(inches),
          List.of(inches));
    }
    return new LayoutRules(
        origin,
        stagger,
        stripRule,
        minStrip,
        inches,
        usual("sheet_length_in", MODULE_LENGTH - gap),
        supportWidth,
        minBearing,
        isLaid);
  }

  /** Sheets as they were measured, which may creep off their supports. */
  public LayoutRules sheetLength(Figure<Length> inches) {
    return new LayoutRules(
        origin, stagger, stripRule, minStrip, gap, inches, supportWidth, minBearing, isLaid);
  }

  public LayoutRules supportWidth(Figure<Length> inches) {
    return new LayoutRules(
        origin, stagger, stripRule, minStrip, gap, sheetLength, inches, minBearing, isLaid);
  }

  public LayoutRules minBearing(Figure<Length> inches) {
    return new LayoutRules(
        origin, stagger, stripRule, minStrip, gap, sheetLength, supportWidth, inches, isLaid);
  }

  /** The same rules for a deck that already lies there. */
  public LayoutRules asLaid() {
    return new LayoutRules(
        origin, stagger, stripRule, minStrip, gap, sheetLength, supportWidth, minBearing, true);
  }

  /** The rules as plain values, lengths in inches. */
  public record Plain(
      double origin,
      double stagger,
      StripRule stripRule,
      double minStrip,
      double gap,
      double sheetLength,
      double supportWidth,
      double minBearing,
      boolean isLaid) {}

  /** Every rule, read. */
  public Plain plain(Reading reading) {
    return new Plain(
        reading.number("first joint", origin, Units.INCH),
        reading.number("stagger", stagger, Units.INCH),
        reading.word("rule for the strip", stripRule),
        reading.number("least strip", minStrip, Units.INCH),
        reading.number("gap", gap, Units.INCH),
        reading.number("length of the sheets", sheetLength, Units.INCH),
        reading.number("width of the supports", supportWidth, Units.INCH),
        reading.number("least bearing", minBearing, Units.INCH),
        isLaid);
  }
}
