package sheathwright.fastening.schedule;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.fastening.strength.NailType;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.loads.wind.CodeWind;

/** The codes' nailing of roof panels by edition. */
public final class NailingSchedules {

  private static final Figure<Length> WIDE =
      Figure.constant("wide_support_spacing_in", 48, Units.INCH, NailingRow.SOURCE).symbol("48 in");

  private static final Source PRESCRIPTIVE = WindDesign.PRESCRIPTIVE;
  private static final Figure<Speed> DESIGNED =
      Figure.constant("designed_wind_mph", 140, Units.MPH, PRESCRIPTIVE).symbol("140 mph");

  private NailingSchedules() {}

  /** The wind, as long as a code's table may answer to it. */
  private static Figure<Speed> prescriptive(Figure<Speed> wind) {
    return wind.onlyIf(
            wind.isLessThan(DESIGNED),
            "the prescriptive code ends where the wind reaches 140 mph, by %s: take sheathing_uplift and"
                    .formatted(PRESCRIPTIVE)
                + " nail_spacing_for_uplift, a wind standard or an engineer")
        .as("prescriptive_wind_mph", Units.MPH, PRESCRIPTIVE);
  }

  /** Thickness of a roof panel as stamped, 0.25 in to 1.5 in. */
  static Figure<Length> thickness(Figure<Length> thickness) {
    return thickness.within(
        "thickness_in",
        Units.INCH,
        Limits.between(0.25, 1.5, "as stamped; 7/16 and 15/32 are usual"));
  }

  /**
   * The nailing that a code's edition prints for a roof panel, by thickness, nail and wind, and
   * why.
   *
   * <pre>
   * edge, field = printed in the row of the thickness and nail; in the IRC 6 in at most on supports
   *               48 in or more apart
   * near edges  = on supports within 48 in of roof edges and ridges, gable = on gable-end framing:
   *               by the footnote on wind
   * wind design = may be required from 115 mph; from 140 mph the code's table ends
   * </pre>
   *
   * <p>Does not cover design for uplift, which can ask for more (see the uplift functions), changes
   * that a state or town has made, high-wind regions outside the code's tables, staples (see {@code
   * alternate_schedule}), or boards. The IRC of 2015 and 2018 prints one wind for every exposure,
   * later editions print exposures B and C only. From 140 mph the prescriptive code ends and
   * nothing is answered: take {@code sheathing_uplift} and {@code nail_spacing_for_uplift}, a wind
   * standard or an engineer. From 115 mph the code's map says where that holds already. Screening
   * only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * nailingSchedule(IRC_2018, in("7/16"), NAIL_8D_COMMON, CodeWind.of(mph(115), EXPOSURE_B), NailedRafters.spacing(in(24))).field() // 12 in
   * nailingSchedule(IRC_2021, in("7/16"), NAIL_RSRS_01, CodeWind.of(mph(115), EXPOSURE_C), NailedRafters.spacing(in(24))).nearEdges() // 4 in
   * nailingSchedule(IRC_2021, in("7/16"), NAIL_RSRS_01, CodeWind.of(mph(110), EXPOSURE_C), NailedRafters.spacing(in(24))).reason() // wind-within-the-footnote
   * }</pre>
   *
   * @param code body and edition that the building department has adopted
   * @param thickness as stamped, 0.25 in to 1.5 in; must be within 1/128 in of the row's
   * @param nail as it is called
   * @param wind that the code's map says, and how the site lies in it
   * @param rafters that the panel is nailed to
   * @return spacings in inches on panel edges, in the field, near the roof's edges and on gable-end
   *     framing; the row's number; the reason; whether wind design may be required
   * @throws RefusedException if a number lies outside its range, the wind is 140 mph or more, or
   *     the table does not print the nail for the thickness, wind, exposure or specific gravity
   * @see "IRC 2015, 2018, 2021 and 2024 Table R602.3(1), IBC 2015 Table 2304.10.1, IBC 2021 and
   *     2024 Table 2304.10.2, read on state code pages; where wind must be designed for, IRC
   *     R301.2.1.1, from memory"
   */
  @LibraryFunction(words = {"code nailing", "nail pattern"})
  public static NailingSchedule nailingSchedule(
      @Column("code") OneOf<NailingCode> code,
      @Column("thickness_in") Figure<Length> thickness,
      @Column("nail") OneOf<NailType> nail,
      CodeWind wind,
      NailedRafters rafters) {
    var blowing = prescriptive(wind.speed());
    var row =
        new NailingRow(
            code.choice().argument("code"),
            nail.choice().argument("nail"),
            thickness(thickness),
            blowing,
            wind.exposure().choice(),
            rafters.gravity());

    var edge =
        row.holding("edge_in", Units.INCH).as("edge_spacing_in", Units.INCH, NailingRow.SOURCE);
    var field =
        Figure.choose(
                rafters.spacing().isAtLeast(WIDE),
                row.holding("wide_field_in", Units.INCH).as("wide_spacing_in", Units.INCH),
                row.holding("field_in", Units.INCH).as("row_spacing_in", Units.INCH))
            .as("field_spacing_in", Units.INCH, NailingRow.SOURCE);
    return new NailingSchedule(
        edge,
        field,
        row.byWind("near_in")
            .as("row_near_edges_in", Units.INCH)
            .min(field)
            .as("near_edges_spacing_in", Units.INCH, NailingRow.SOURCE),
        row.byWind("gable_in").as("gable_spacing_in", Units.INCH, NailingRow.SOURCE),
        row.holding("item", Units.RATIO).as("item", Units.RATIO, NailingRow.SOURCE),
        row.reason().as("reason", NailingRow.SOURCE),
        WindDesign.at(blowing));
  }
}
