package sheathwright.job;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.framing.rafter.RafterScreenings;
import sheathwright.loads.DeadLoads;
import sheathwright.wood.Grade;
import sheathwright.wood.LumberSize;
import sheathwright.wood.RafterSections;
import sheathwright.wood.SectionProperties;
import sheathwright.wood.ServiceMoisture;
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
            section.thickness(),
            section.depth(),
            job.fact("support_spacing_in", Units.INCH),
            DRY_WOOD)
        .as("rafters_psf", Units.PSF);
  }

  static SectionProperties section(Job job) {
    return RafterSections.sectionProperties(
        job.<LumberSize>word("rafter_size"),
        job.wordOr("rafter_stock", Stock.DRESSED),
        job.factOr("rafter_thickness_in", 0, Units.INCH),
        job.factOr("rafter_depth_in", 0, Units.INCH));
  }

  static RafterScreening screening(Job job, Figure<Pressure> dead) {
    Figure<Pressure> given = job.fact("live_psf", Units.PSF);
    Condition isSnow = job.<RafterLoad>word("load").is(RafterLoad.SNOW);
    return RafterScreenings.rafterScreening(
        job.<Species>word("species"),
        job.<Grade>word("grade"),
        job.<LumberSize>word("rafter_size"),
        job.fact("support_spacing_in", Units.INCH),
        Figure.choose(isSnow, job.factOr("roof_live_psf", USUAL_ROOF_LIVE, Units.PSF), given)
            .as("roof_live_taken_psf", Units.PSF),
        Figure.choose(isSnow, given, NO_SNOW).as("snow_taken_psf", Units.PSF),
        dead,
        job.fact("deflection_limit", Units.RATIO),
        job.<ValueSet>word("value_set"),
        job.fact("span_ft", Units.FOOT),
        job.fact("bearing_in", Units.INCH),
        job.wordOr("rafter_stock", Stock.DRESSED),
        job.factOr("rafter_thickness_in", 0, Units.INCH),
        job.factOr("rafter_depth_in", 0, Units.INCH),
        job.wordOr("moisture", ServiceMoisture.DRY),
        job.factOr("temperature_f", 70, Units.RATIO),
        job.wordOr("incised", YesNo.NO),
        job.wordOr("seasoned", YesNo.NO),
        job.factOr("total_deflection_limit", 0, Units.RATIO),
        job.factOr("notch_in", 0, Units.INCH),
        job.factOr("end_distance_in", 0, Units.INCH),
        job.factOr("rise_in_12", 3, Units.RISE_IN_12),
        job.factOr("tie_height_in", 0, Units.INCH),
        job.factOr("brace_spacing_in", 0, Units.INCH),
        job.factOr("deck_off_live_psf", USUAL_ROOF_LIVE, Units.PSF));
  }
}
