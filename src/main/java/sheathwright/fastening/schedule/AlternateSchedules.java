package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.loads.wind.CodeWind;
import sheathwright.published.Published;
import sheathwright.wood.Nds;

/** The code's staples and thin nails in place of the usual ones. */
public final class AlternateSchedules {

  private static final Table TABLE =
      Published.table(
          "irc/2015-2024/roof-alternates.csv", "roof_alternates", "IRC alternate fasteners", 3);
  private static final Source SOURCE = TABLE.source();
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> NEAR = NailingRow.NEAR;
  private static final Figure<Length> HALF = inch("half_panel_in", 0.5, "1/2 in");
  private static final Figure<Length> LEAST = inch("least_panel_in", 0.375, "3/8 in");
  private static final Figure<Length> FROM_19_32 = inch("second_from_in", 0.59375, "19/32 in");
  private static final Figure<Length> TO_5_8 = inch("second_to_in", 0.625, "5/8 in");
  private static final Figure<Length> FROM_23_32 = inch("third_from_in", 0.71875, "23/32 in");
  private static final Figure<Length> TO_3_4 = inch("third_to_in", 0.75, "3/4 in");
  private static final Figure<Length> WHOLE = inch("fourth_in", 1, "1 in");

  /** The table's four groups of panel thickness. */
  private enum Panel implements Option<Panel> {
    UP_TO_1_2("up-to-1/2-in"),
    FROM_19_32_TO_5_8("19/32-to-5/8-in"),
    FROM_23_32_TO_3_4("23/32-to-3/4-in"),
    OF_1("1-in");

    private final String word;

    Panel(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private AlternateSchedules() {}

  private static Figure<Length> inch(String name, double inches, String print) {
    return Figure.constant(name, inches, Units.INCH, SOURCE).symbol(print);
  }

  /**
   * The staples or thin nails that the house code's edition lets stand in place of the usual nails
   * of a roof panel.
   *
   * <pre>
   * length, edge and field as printed for the thickness; since 2021 on roofs 3 in at all supports
   * wind under 130 mph in 2015 and 2018, up to 110 mph since 2021
   * </pre>
   *
   * <p>Does not cover design for uplift, what a state or town has changed, or old staples found in
   * a deck. Staples are not advised in high wind. Staples have a crown of 7/16 in or more;
   * gable-end framing takes the edge spacing. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * alternateSchedule(IRC_2018, in("7/16"), STAPLE_16_GA, mph(115), number(0.42)).edge() // 3 in
   * alternateSchedule(IRC_2018, in("7/16"), STAPLE_16_GA, mph(115), number(0.42)).length() // 1-3/4 in
   * }</pre>
   *
   * @param code IRC and its edition
   * @param thickness as stamped, 0.25 in to 1.5 in; must be within 1/128 in of a printed one
   * @param alternate staple by its gauge, or nail by its diameter
   * @param wind ultimate wind speed, 85 mph to 200 mph
   * @param specificGravity G of the rafters, 0.2 to 0.8; matters since 2024
   * @return least length, edge spacing and field spacing in inches
   * @throws RefusedException if a number lies outside its range, or the table does not print the
   *     fastener for the thickness, wind or specific gravity
   * @see "IRC 2015, 2018, 2021 and 2024 Table R602.3(2), read on state code pages"
   */
  @LibraryFunction(words = {"staple", "thin nail"})
  public static AlternateSchedule alternateSchedule(
      @Column("code") OneOf<NailingCode> code,
      @Column("thickness_in") Figure<Length> thickness,
      @Column("alternate") OneOf<AlternateFastener> alternate,
      @Column("wind_mph") Figure<Speed> wind,
      @Column(value = "specific_gravity", preset = "0.36") Figure<Ratio> specificGravity) {
    Choice<NailingCode> edition = code.choice().argument("code");
    Choice<AlternateFastener> fastener = alternate.choice().argument("alternate");
    var panel = NailingSchedules.thickness(thickness);
    var mph = Columns.of(CodeWind.class).let("speed", wind);
    var gravity = Nds.gravity("specific_gravity", specificGravity);

    var fourth =
        Choice.choose(panel.isAtMost(TO_3_4.plus(NEAR)), Panel.FROM_23_32_TO_3_4, Panel.OF_1)
            .as("panel_over_5_8");
    var third =
        Choice.choose(panel.isAtMost(TO_5_8.plus(NEAR)), Panel.FROM_19_32_TO_5_8, fourth)
            .as("panel_over_1_2");
    var group =
        Choice.choose(panel.isAtMost(HALF.plus(NEAR)), Panel.UP_TO_1_2, third).as("panel_group");
    Condition isThin =
        Condition.any(between(panel, LEAST, HALF), between(panel, FROM_19_32, TO_5_8))
            .as("is_a_thin_panel")
            .is(YesNo.YES);
    Condition isThick =
        Condition.any(between(panel, FROM_23_32, TO_3_4), between(panel, WHOLE, WHOLE))
            .as("is_a_thick_panel")
            .is(YesNo.YES);
    var most =
        TABLE.number(Units.MPH, "wind_mph", edition, group, fastener).as("most_mph", Units.MPH);
    var atMost =
        TABLE.number(Units.RATIO, "at_wind", edition, group, fastener).as("at_wind", Units.RATIO);
    Condition isCalm =
        Condition.any(
            mph.isLessThan(most), Condition.all(mph.isAtMost(most), atMost.isTheSameAs(ONE)));
    var leastGravity =
        TABLE
            .number(Units.RATIO, "least_gravity", edition, group, fastener)
            .as("least_gravity", Units.RATIO);
    Condition isPrinted =
        Condition.all(Condition.any(isThin, isThick), isCalm, gravity.isAtLeast(leastGravity))
            .as("is_printed")
            .is(YesNo.YES);
    String reason =
        ("%s does not print %s for this thickness, wind or specific gravity (%s); take the nails of"
                + " its main table")
            .formatted(edition, fastener, SOURCE);
    return new AlternateSchedule(
        row("length_in", edition, group, fastener)
            .onlyIf(isPrinted, reason)
            .as("length_in", Units.INCH, SOURCE),
        row("edge_in", edition, group, fastener)
            .onlyIf(isPrinted, reason)
            .as("edge_spacing_in", Units.INCH, SOURCE),
        row("field_in", edition, group, fastener)
            .onlyIf(isPrinted, reason)
            .as("field_spacing_in", Units.INCH, SOURCE));
  }

  private static Figure<Length> row(String column, OneOf<?>... keys) {
    return TABLE.number(Units.INCH, column, keys).as("printed_" + column, Units.INCH);
  }

  private static Condition between(
      Figure<Length> panel, Figure<Length> least, Figure<Length> most) {
    return Condition.all(panel.isAtLeast(least.minus(NEAR)), panel.isAtMost(most.plus(NEAR)));
  }
}
