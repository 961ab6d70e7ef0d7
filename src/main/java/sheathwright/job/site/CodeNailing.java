package sheathwright.job.site;

import java.util.stream.Stream;
import sheathwright.fastening.schedule.HighWindSchedules;
import sheathwright.fastening.schedule.HighWindSpacing;
import sheathwright.fastening.schedule.NailedRafters;
import sheathwright.fastening.schedule.NailingCode;
import sheathwright.fastening.schedule.NailingSchedule;
import sheathwright.fastening.schedule.NailingSchedules;
import sheathwright.fastening.strength.NailType;
import sheathwright.fastening.uplift.AllowedSpacing;
import sheathwright.fastening.uplift.UpliftSpacings;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Facts;
import sheathwright.loads.wind.CodeWind;
import sheathwright.loads.wind.Exposure;

/**
 * The nailing that a job's code asks for. Seven codes print it in a table, to 140 mph; from there
 * on each zone is nailed for its uplift, where the job says enough to work that out. One code
 * prints ring-shank nails by wind. Whichever road is not taken is asked for a usual deck, so that
 * the workbook can change its mind.
 */
final class CodeNailing {

  private static final Source PRESCRIPTIVE = Source.fromMemory("IRC R301.2.1.1");
  private static final Source HIGH_WIND = Source.read("FBC-Residential 2023, R803.2.3.1");
  private static final Figure<Speed> DESIGNED =
      Figure.constant("design_from_mph", 140, Units.MPH, PRESCRIPTIVE).symbol("140 mph");
  private static final Figure<Length> SIX =
      Figure.constant("inner_most_in", 6, Units.INCH, HIGH_WIND).symbol("6 in");
  private static final Figure<Length> THIN =
      Figure.constant("thin_panel_in", 15.0 / 32, Units.INCH, HIGH_WIND).symbol("15/32 in");
  private static final Figure<Length> NEAR =
      Figure.constant("near_thickness_in", 1.0 / 128, Units.INCH, Source.COMMON_PRACTICE)
          .symbol("1/128 in");
  private static final Figure<Length> WIDEST =
      Figure.constant("ring_widest_supports_in", 24, Units.INCH, HIGH_WIND).symbol("24 in");
  private static final Figure<Length> MOST_FOR_UPLIFT =
      Figure.constant("most_for_uplift_in", 6, Units.INCH, Source.COMMON_PRACTICE).symbol("6 in");

  private static final String NO_SUCH_RING =
      "%s prints ring-shank nails alone: rsrs-03, or rsrs-01 and rsrs-04 in panels to 15/32 in, on"
              .formatted(HIGH_WIND)
          + " rafters to 24 in apart; take one of these, or have it designed";

  // A deck that every road answers, for the roads that are not taken.
  private static final Figure<Length> USUAL_PANEL = usual("panel_in", 7.0 / 16, Units.INCH);
  private static final Figure<Speed> USUAL_WIND = usual("wind_mph", 115, Units.MPH);
  private static final Figure<Ratio> USUAL_GRAVITY = usual("gravity", 0.42, Units.RATIO);
  private static final Figure<Pressure> LITTLE_UPLIFT = usual("uplift_psf", 10, Units.PSF);

  private final Choice<NailingCode> code;
  private final Choice<NailType> nail;
  private final Figure<Length> thickness;
  private final Figure<Speed> wind;
  private final Choice<Exposure> exposure;
  private final Frame frame;
  private final DeckNail deckNail;
  private final SiteWind site;
  private final Condition isRing;
  private final Condition isDesigned;

  CodeNailing(Facts said, Frame frame, DeckNail deckNail, SiteWind site) {
    code = said.word(SiteFields.CODE);
    nail = said.word(SiteFields.NAIL);
    thickness = said.figure(SiteFields.PANEL_THICKNESS);
    wind = said.figure(SiteFields.WIND);
    exposure = said.word(SiteFields.EXPOSURE);
    this.frame = frame;
    this.deckNail = deckNail;
    this.site = site;
    isRing = code.is(NailingCode.FBC_2023);
    Choice<YesNo> isHighWind = wind.isAtLeast(DESIGNED).as("is_beyond_the_prescriptive_code");
    isDesigned =
        Choice.choose(isRing, YesNo.NO, isHighWind).as("is_nailed_for_uplift").is(YesNo.YES);
  }

  private static <Q extends Quantity> Figure<Q> usual(String what, double number, Unit<Q> unit) {
    return Figure.constant("any_usual_" + what, number, unit, Source.ARITHMETIC)
        .symbol(Figure.of(number, unit).shown());
  }

  /** Whether the prescriptive code has ended, so that each zone is nailed for its uplift. */
  Condition isDesigned() {
    return isDesigned;
  }

  /** What the code asks for; refused where the job does not say enough, or the code not that. */
  Spacings spacings() {
    boolean isUpliftKnown =
        Stream.of(
                code, deckNail.holds(), site.uplift(RoofArea.FIELD), site.uplift(RoofArea.CORNERS))
            .allMatch(known -> known.refusal().isEmpty());
    Spacings prescribed =
        Spacings.choose(
            isRing,
            isUpliftKnown ? "prescribed" : "code",
            ring(),
            printed(isUpliftKnown ? Condition.any(isRing, isDesigned) : isRing));
    return isUpliftKnown
        ? Spacings.choose(isDesigned, "code", forUplift(), prescribed)
        : prescribed;
  }

  /** By the table of the code. */
  private Spacings printed(Condition isElsewhere) {
    Choice<YesNo> isAway = isElsewhere.as("is_not_by_the_table");
    Condition away = isAway.is(YesNo.YES);
    NailingSchedule row =
        NailingSchedules.nailingSchedule(
            Choice.choose(away, NailingCode.IRC_2021, code).as("code_asked"),
            Figure.choose(away, USUAL_PANEL, thickness).as("panel_asked_in", Units.INCH),
            Choice.choose(away, NailType.NAIL_8D_COMMON, nail).as("nail_asked"),
            CodeWind.of(
                Figure.choose(away, USUAL_WIND, wind).as("wind_asked_mph", Units.MPH),
                Choice.choose(away, Exposure.EXPOSURE_B, exposure).as("exposure_asked")),
            NailedRafters.spacing(frame.spacing())
                .gravity(
                    Figure.choose(away, USUAL_GRAVITY, deckNail.gravity())
                        .as("gravity_asked", Units.RATIO)));
    return new Spacings(row.edge(), row.field(), row.edge(), row.nearEdges(), row.gable());
  }

  /** By the one code that prints ring-shank nails by wind. */
  private Spacings ring() {
    Choice<NailType> ringNail =
        Choice.choose(isRing, nail, NailType.NAIL_RSRS_03).as("ring_nail_asked");
    Figure<Length> panel =
        Figure.choose(isRing, thickness, USUAL_PANEL).as("panel_of_ring_nails_in", Units.INCH);
    Figure<Length> supports =
        Figure.choose(isRing, frame.spacing(), WIDEST).as("supports_of_ring_nails_in", Units.INCH);
    Condition isPrinted =
        Condition.all(
            Condition.any(
                ringNail.is(NailType.NAIL_RSRS_03),
                Condition.all(
                    Condition.any(
                        ringNail.is(NailType.NAIL_RSRS_01), ringNail.is(NailType.NAIL_RSRS_04)),
                    panel.isAtMost(THIN.plus(NEAR)))),
            supports.isAtMost(WIDEST));
    HighWindSpacing row =
        HighWindSchedules.highWindSchedule(
            Figure.choose(isRing, wind, USUAL_WIND).as("wind_of_ring_nails_mph", Units.MPH),
            exposure,
            Figure.choose(isRing, deckNail.gravity(), USUAL_GRAVITY)
                .as("gravity_of_ring_nails", Units.RATIO));
    Figure<Length> edge = row.edge().onlyIf(isPrinted, NO_SUCH_RING).as("ring_edge_in", Units.INCH);
    Figure<Length> field =
        row.field().onlyIf(isPrinted, NO_SUCH_RING).as("ring_field_in", Units.INCH);
    return new Spacings(edge.max(SIX), field.max(SIX), edge, field, edge);
  }

  /** As close as the wind asks, each zone by itself; the strips along edges as their corners. */
  private Spacings forUplift() {
    Figure<Length> inner = forUplift(RoofArea.FIELD);
    Figure<Length> near = forUplift(RoofArea.CORNERS);
    return new Spacings(inner, inner, near, near, near);
  }

  private Figure<Length> forUplift(RoofArea area) {
    Figure<Pressure> uplift =
        Figure.choose(isDesigned, site.uplift(area), LITTLE_UPLIFT)
            .as("uplift_asked_%s_psf".formatted(area.word()), Units.PSF);
    return UpliftSpacings.practicalNailSpacing(
            AllowedSpacing.load(
                    UpliftSpacings.nailSpacingForUplift(deckNail.holds(), uplift, frame.spacing()))
                .code(MOST_FOR_UPLIFT))
        .as("spacing_for_uplift_%s_in".formatted(area.word()), Units.INCH);
  }
}
