package sheathwright.fastening.schedule;

import java.util.ArrayList;
import java.util.List;
import sheathwright.fastening.strength.NailType;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.loads.wind.Exposure;
import sheathwright.published.Published;

/** One row of the codes' tables of roof nails: where it holds, and what it prints. */
final class NailingRow {

  /** Which of a table's three rows of thicknesses. */
  enum Band implements Option<Band> {
    THIN,
    MIDDLE,
    THICK
  }

  private static final Table TABLE = bothCodes();

  /** The tables that every value comes from. */
  static final Source SOURCE = TABLE.source();

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Speed> ONE_MPH = Figure.of(1, Units.MPH);
  private static final Figure<Speed> NO_FOOTNOTE =
      Figure.constant("no_footnote_mph", 999, Units.MPH, SOURCE).symbol("999 mph");

  /** How near a thickness must come to a printed one. */
  static final Figure<Length> NEAR =
      Figure.constant("near_enough_in", 1.0 / 128, Units.INCH, Source.COMMON_PRACTICE)
          .symbol("1/128 in");

  private static final Figure<Length> THIN_MOST =
      Figure.constant("thin_most_in", 0.5, Units.INCH, SOURCE).symbol("1/2 in");
  private static final Figure<Length> OLD_MIDDLE_MOST =
      Figure.constant("old_middle_most_in", 1, Units.INCH, SOURCE).symbol("1 in");
  private static final Figure<Length> NEW_MIDDLE_MOST =
      Figure.constant("new_middle_most_in", 0.75, Units.INCH, SOURCE).symbol("3/4 in");

  private final Choice<NailingCode> code;
  private final Choice<NailType> nail;
  private final Choice<Band> band;
  private final Figure<Speed> limit;
  private final Choice<YesNo> isWindy;
  private final Choice<YesNo> isPrinted;

  NailingRow(
      Choice<NailingCode> code,
      Choice<NailType> nail,
      Figure<Length> thickness,
      Figure<Speed> wind,
      Choice<Exposure> exposure,
      Figure<Ratio> gravity) {
    this.code = code;
    this.nail = nail;
    var middleMost =
        Figure.choose(
                Condition.any(code.is(NailingCode.IRC_2015), code.is(NailingCode.IRC_2018)),
                OLD_MIDDLE_MOST,
                NEW_MIDDLE_MOST)
            .as("middle_most_in", Units.INCH);
    var thicker =
        Choice.choose(thickness.isAtMost(middleMost.plus(NEAR)), Band.MIDDLE, Band.THICK)
            .as("band_over_half_an_inch");
    band = Choice.choose(thickness.isAtMost(THIN_MOST.plus(NEAR)), Band.THIN, thicker).as("band");
    var limitCorD =
        Figure.choose(
                exposure.is(Exposure.EXPOSURE_C),
                printed("limit_c_mph", Units.MPH),
                printed("limit_d_mph", Units.MPH))
            .as("limit_c_or_d_mph", Units.MPH);
    limit =
        Figure.choose(
                exposure.is(Exposure.EXPOSURE_B), printed("limit_b_mph", Units.MPH), limitCorD)
            .as("footnote_wind_mph", Units.MPH, SOURCE);
    isWindy =
        Condition.any(
                wind.isMoreThan(limit),
                Condition.all(
                    wind.isAtLeast(limit), printed("limit_is_windy", Units.RATIO).isTheSameAs(ONE)))
            .as("is_beyond_the_footnote");
    var isOfTheThickness =
        Condition.all(
                thickness.isAtLeast(limit("thickness_least_in", Units.INCH).minus(NEAR)),
                thickness.isAtMost(limit("thickness_most_in", Units.INCH).plus(NEAR)))
            .as("is_of_the_thickness");
    isPrinted =
        Condition.all(
                isOfTheThickness.is(YesNo.YES),
                wind.isLessThan(limit("below_mph", Units.MPH)),
                limit.isAtLeast(ONE_MPH),
                gravity.isAtLeast(limit("least_gravity", Units.RATIO)),
                gravity.isLessThan(limit("below_gravity", Units.RATIO)))
            .as("is_printed");
  }

  /** A printed column, refused where the row does not hold. */
  <Q extends Quantity> Figure<Q> holding(String column, Unit<Q> unit) {
    return onlyIfPrinted(printed(column, unit).as("printed_" + column, unit));
  }

  /** The same, by whether the wind is beyond the footnote's. */
  Figure<Length> byWind(String place) {
    return onlyIfPrinted(
        Figure.choose(
                isWindy.is(YesNo.YES),
                printed("windy_" + place, Units.INCH),
                printed("calm_" + place, Units.INCH))
            .as("by_wind_" + place, Units.INCH));
  }

  /** Why the spacings are what they are. */
  Choice<NailingReason> reason() {
    var byWind =
        Choice.choose(
                isWindy.is(YesNo.YES),
                NailingReason.WIND_BEYOND_THE_FOOTNOTE,
                NailingReason.WIND_WITHIN_THE_FOOTNOTE)
            .as("reason_by_wind");
    return Choice.choose(limit.isAtLeast(NO_FOOTNOTE), NailingReason.NO_WIND_FOOTNOTE, byWind);
  }

  private <Q extends Quantity> Figure<Q> limit(String column, Unit<Q> unit) {
    return printed(column, unit).as("row_" + column, unit);
  }

  private <Q extends Quantity> Figure<Q> printed(String column, Unit<Q> unit) {
    return TABLE.number(unit, column, code, band, nail);
  }

  private <Q extends Quantity> Figure<Q> onlyIfPrinted(Figure<Q> figure) {
    return figure.onlyIf(
        isPrinted.is(YesNo.YES),
        ("the row of %s for %s is not printed for this thickness, wind, exposure or specific"
                + " gravity (%s); read the table's limits, choose another nail or have it designed")
            .formatted(code, nail, SOURCE));
  }

  private static Table bothCodes() {
    Table irc =
        Published.table("irc/2015-2024/roof-nailing.csv", "irc_nailing", "IRC roof nailing", 3);
    Table ibc =
        Published.table("ibc/2015-2024/roof-nailing.csv", "ibc_nailing", "IBC roof nailing", 3);
    List<List<String>> rows = new ArrayList<>(irc.rows());
    rows.addAll(ibc.rows());
    List<String> notes = new ArrayList<>(irc.notes());
    notes.addAll(ibc.notes());
    return new Table(
        "roof_nailing",
        "roof nailing rows",
        irc.keys(),
        irc.columns(),
        List.copyOf(rows),
        Source.read("IRC Table R602.3(1) and IBC Tables 2304.10.1 and 2304.10.2, 2015 to 2024"),
        List.copyOf(notes));
  }
}
