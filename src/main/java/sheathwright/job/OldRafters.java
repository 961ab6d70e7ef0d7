package sheathwright.job;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.Birdsmouth;
import sheathwright.framing.rafter.DeckOff;
import sheathwright.framing.rafter.OldRafter;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.framing.rafter.RafterScreenings;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.framing.rafter.SagLimits;
import sheathwright.loads.DeadLoads;
import sheathwright.loads.RoofLoads;
import sheathwright.wood.ActualSize;
import sheathwright.wood.CrossSection;
import sheathwright.wood.Grade;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Member;
import sheathwright.wood.Moisture;
import sheathwright.wood.RafterSections;
import sheathwright.wood.Seat;
import sheathwright.wood.SectionProperties;
import sheathwright.wood.ServiceConditions;
import sheathwright.wood.Species;
import sheathwright.wood.Stock;
import sheathwright.wood.ValueSet;

/**
 * A job's rafters as they are screened, from what the job says and what is usual where it does not.
 */
final class OldRafters {

  private static final double USUAL_ROOF_LIVE = 20;
  private static final Figure<Density> DRY_WOOD =
      Figure.constant("dry_wood_pcf", 34, Units.PCF, Source.COMMON_PRACTICE);
  private static final Figure<Pressure> NO_SNOW = Figure.of(0, Units.PSF);

  private OldRafters() {}

  /** What the rafters weigh themselves, which no list of layers holds. */
  static Figure<Pressure> ownWeight(Job job) {
    SectionProperties section = section(job);
    return DeadLoads.framingLoad(
            CrossSection.thickness(section.thickness()).depth(section.depth()),
            job.fact("support_spacing_in", Units.INCH),
            DRY_WOOD)
        .as("rafters_psf", Units.PSF);
  }

  static SectionProperties section(Job job) {
    return RafterSections.sectionProperties(job.<LumberSize>word("rafter_size"), actual(job));
  }

  /** The stick that every rafter is. */
  static Member member(Job job) {
    return new Member(
        Lumber.of(
            job.<Species>word("species"),
            job.<Grade>word("grade"),
            job.<LumberSize>word("rafter_size"),
            job.<ValueSet>word("value_set")),
        actual(job),
        ServiceConditions.of(job.wordOr("moisture", Moisture.STAYS_DRY))
            .temperature(job.factOr("temperature_f", 70, Units.RATIO)),
        job.wordOr("incised", YesNo.NO));
  }

  private static ActualSize actual(Job job) {
    return ActualSize.of(job.wordOr("rafter_stock", Stock.DRESSED))
        .thickness(job.factOr("rafter_thickness_in", 0, Units.INCH))
        .depth(job.factOr("rafter_depth_in", 0, Units.INCH));
  }

  /** Where every rafter bears. */
  static Seat seat(Job job) {
    return Seat.of(job.fact("bearing_in", Units.INCH))
        .endDistance(job.factOr("end_distance_in", 0, Units.INCH));
  }

  static RafterScreening screening(Job job, Figure<Pressure> dead) {
    return RafterScreenings.rafterScreening(
        OldRafter.of(member(job), job.fact("support_spacing_in", Units.INCH), triangle(job))
            .seasoned(job.wordOr("seasoned", YesNo.NO)),
        Birdsmouth.of(seat(job)).notch(job.factOr("notch_in", 0, Units.INCH)),
        loads(job, dead),
        DeckOff.braceSpacing(job.factOr("brace_spacing_in", 0, Units.INCH))
            .live(job.factOr("deck_off_live_psf", USUAL_ROOF_LIVE, Units.PSF)),
        SagLimits.live(job.fact("deflection_limit", Units.RATIO))
            .total(job.factOr("total_deflection_limit", 0, Units.RATIO)));
  }

  private static RoofTriangle triangle(Job job) {
    return RoofTriangle.span(job.fact("span_ft", Units.FOOT))
        .rise(job.factOr("rise_in_12", 3, Units.RISE_IN_12))
        .tieHeight(job.factOr("tie_height_in", 0, Units.INCH));
  }

  private static RoofLoads loads(Job job, Figure<Pressure> dead) {
    Figure<Pressure> given = job.fact("live_psf", Units.PSF);
    Condition isSnow = job.<RafterLoad>word("load").is(RafterLoad.SNOW);
    return RoofLoads.dead(dead)
        .roofLive(
            Figure.choose(isSnow, job.factOr("roof_live_psf", USUAL_ROOF_LIVE, Units.PSF), given)
                .as("roof_live_taken_psf", Units.PSF))
        .snow(Figure.choose(isSnow, given, NO_SNOW).as("snow_taken_psf", Units.PSF));
  }
}
