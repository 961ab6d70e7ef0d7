package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Narrowed;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.loads.wind.CodeWind;
import sheathwright.loads.wind.Exposure;
import sheathwright.published.Published;

/** How hard the wind pulls rafters off the wall. */
public final class RafterUplifts {

  private static final Table TABLE =
      Published.table(
          "irc/2018/uplift-connections.csv", "uplift_connections", "uplift connections", 3);
  private static final List<Figure<Length>> SPACINGS =
      PrintedHeadings.printed("printed_spacing_%s_in", TABLE, Units.INCH, 12, 16, 24);
  private static final List<Figure<Length>> SPANS =
      PrintedHeadings.printed(
          "printed_span_%s_ft", TABLE, Units.FOOT, 12, 18, 24, 28, 32, 36, 42, 48);
  private static final List<Figure<Speed>> WINDS =
      PrintedHeadings.printed("printed_wind_%s_mph", TABLE, Units.MPH, 110, 115, 120, 130, 140);
  private static final Figure<Ratio> STEEP =
      Figure.constant("steep_rise_in_12", 5, Units.RISE_IN_12, TABLE.source()).symbol("5 in 12");
  private static final Figure<Force> NOTHING = Figure.of(0, Units.POUND);

  private static final double LEAST_WIND = 85;
  private static final double MOST_WIND = 140;
  private static final String WIND_RULE = "the table ends there; over 140 an engineer decides";
  private static final String NOT_READ =
      "exposure: the table's part for Exposure C and D, where the wind pulls harder, is not here; ask an engineer";

  private RafterUplifts() {}

  /** How the table divides pitches. */
  enum Pitch implements Option<Pitch> {
    BELOW_5,
    FROM_5
  }

  /**
   * What the wind pulls at the joint of one rafter and the wall, and whether the tie that is there
   * holds it.
   *
   * <pre>
   * uplift  = printed at the next larger printed wind, roof span and spacing, by the pitch
   * missing = uplift − tie, none less than 0
   * </pre>
   *
   * <p>Does not cover Exposure C and D, winds over 140 mph, roofs higher than 33 ft, overhangs over
   * 24 in, roofs and ceilings lighter than the table's 15 psf, or the way from the wall down to the
   * footing. A tie nobody saw is no tie. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * upliftTie(in(16), CodeWind.of(mph(115), EXPOSURE_B), ft(28), pitch(4), lb(0)).uplift() // 132 lb
   * upliftTie(in(24), CodeWind.of(mph(130), EXPOSURE_B), ft(30), pitch(6), lb(400)).ok() // yes
   * }</pre>
   *
   * @param spacing of rafters or trusses, center to center, 4 in to 24 in
   * @param wind the ultimate speed of the code's map, 85 mph to 140 mph, in Exposure B
   * @param roofSpan from wall to wall, 1 ft to 48 ft
   * @param rise of the roof, 0 in 12 to 24 in 12
   * @param tie what the tie that is there is listed for, 0 lb to 10000 lb
   * @return pounds of uplift at each rafter, ASD; what the tie lacks, and whether it lacks nothing
   * @throws RefusedException if a number lies outside its range, or the table holds nothing for it
   * @see "IRC 2018 Table R802.11, Exposure B, secondary source; its footnotes from memory"
   */
  @LibraryFunction
  public static UpliftTie upliftTie(
      @Column("spacing_in") Figure<Length> spacing,
      @Narrowed(column = "wind_mph", least = LEAST_WIND, most = MOST_WIND, rule = WIND_RULE)
          CodeWind wind,
      @Column("roof_span_ft") Figure<Length> roofSpan,
      @Column("rise_in_12") Figure<Ratio> rise,
      @Column(value = "tie_lb", preset = "0") Figure<Force> tie) {
    var v =
        wind.speed()
            .within("wind_mph", Units.MPH, Limits.between(LEAST_WIND, MOST_WIND, WIND_RULE));
    var s =
        spacing.within(
            "spacing_in", Units.INCH, Limits.between(4, 24, "the table ends there; 16 is usual"));
    var span =
        roofSpan.within(
            "roof_span_ft",
            Units.FOOT,
            Limits.between(1, 48, "the table ends there; measured wall to wall"));
    var slope =
        rise.within(
            "rise_in_12", Units.RISE_IN_12, Limits.between(0, 24, "inches of rise in 12 of run"));
    var there =
        tie.within(
            "tie_lb",
            Units.POUND,
            Limits.between(0, 10_000, "as its manufacturer lists it; 0 if none was seen"));

    var uplift =
        TABLE
            .numberAt(
                Units.POUND,
                PrintedHeadings.nextLarger("wind_column", "at_", v, WINDS),
                PrintedHeadings.nextLarger("spacing_row", "", s, SPACINGS),
                PrintedHeadings.nextLarger("span_row", "", span, SPANS),
                Choice.choose(slope.isLessThan(STEEP), Pitch.BELOW_5, Pitch.FROM_5).as("pitch_row"))
            .onlyIf(wind.exposure().choice().is(Exposure.EXPOSURE_B), NOT_READ)
            .as("uplift_lb", Units.POUND, TABLE.source());
    var missing = uplift.minus(there).max(NOTHING).as("missing_lb", Units.POUND);
    return new UpliftTie(uplift, missing, missing.isAtMost(NOTHING).as("ok"));
  }

  /**
   * The joint of a rafter and the wall in the wind.
   *
   * @param uplift at each rafter, ASD
   * @param missing how much the tie in place falls short
   * @param ok whether it lacks nothing
   */
  public record UpliftTie(
      @Column("uplift_lb") Figure<Force> uplift,
      @Column("missing_lb") Figure<Force> missing,
      @Column("ok") Choice<YesNo> ok) {}
}
