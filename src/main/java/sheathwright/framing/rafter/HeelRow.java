package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.Published;

/** The row of the code's own table of heel joints that holds for a pair of rafters, if any does. */
final class HeelRow {

  static final Table TABLE =
      Published.table("irc/2018/heel-joints.csv", "heel_joints", "heel joints", 3);

  private static final List<Figure<Ratio>> SLOPES =
      PrintedHeadings.printed("heel_rise_%s_in_12", TABLE, Units.RISE_IN_12, 3, 4, 5, 7, 9, 12);
  private static final List<Figure<Length>> SPACINGS =
      PrintedHeadings.printed("heel_spacing_%s_in", TABLE, Units.INCH, 12, 16, 24);
  private static final List<Figure<Length>> SPANS =
      PrintedHeadings.printed("heel_span_%s_ft", TABLE, Units.FOOT, 12, 20, 28, 36);
  private static final Figure<Ratio> BOTH_SIDES = Figure.of(2, Units.RATIO);

  private final RafterTie tie;
  private final Figure<Ratio> rise;
  private final Figure<Length> spacing;
  private final Figure<Length> roofSpan;
  private final Choice<CodeSnow> snow;
  private final Choice<YesNo> hasSnow;

  HeelRow(RafterTie tie, RoofTriangle triangle, Figure<Length> spacing, Choice<CodeSnow> snow) {
    this.tie = tie;
    this.rise = triangle.rise();
    this.spacing = spacing;
    this.roofSpan = triangle.span().times(BOTH_SIDES).as("roof_span_ft", Units.FOOT);
    this.snow = snow;
    this.hasSnow =
        Condition.any(
                snow.is(CodeSnow.TO_20),
                snow.is(CodeSnow.TO_30),
                snow.is(CodeSnow.TO_50),
                snow.is(CodeSnow.TO_70))
            .as("code_has_the_snow");
  }

  /**
   * Whether the table has it: beyond its ends, and where nobody said the snow, it tells nothing.
   */
  Condition isPrinted() {
    return Condition.all(
            rise.isAtLeast(SLOPES.get(0)),
            spacing.isAtMost(SPACINGS.get(SPACINGS.size() - 1)),
            roofSpan.isAtMost(SPANS.get(SPANS.size() - 1)),
            hasSnow.is(YesNo.YES))
        .as("code_has_a_row")
        .is(YesNo.YES);
  }

  /** Nails of the next flatter slope, wider spacing and longer span; more for a raised tie. */
  Figure<Nails> nails() {
    var printed =
        TABLE
            .numberAt(
                Units.NAIL,
                PrintedHeadings.nextLarger("heel_span_column", "span_", roofSpan, SPANS),
                PrintedHeadings.nextSmaller("heel_slope_row", "", rise, SLOPES),
                PrintedHeadings.nextLarger("heel_spacing_row", "", spacing, SPACINGS),
                Choice.choose(hasSnow.is(YesNo.YES), snow, Choice.literal(CodeSnow.TO_70))
                    .as("heel_snow_column"))
            .as("printed_heel_nails", Units.NAIL, TABLE.source());
    return printed
        .dividedBy(tie.partAbove())
        .in(Units.NAIL)
        .roundedUp()
        .as("heel_nails_of_the_row", Units.NAIL, TABLE.source());
  }
}
