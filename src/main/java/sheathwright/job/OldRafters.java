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
import sheathwright.job.site.SiteFields;
import sheathwright.loads.DeadLoads;
import sheathwright.loads.RoofLoads;
import sheathwright.wood.ActualSize;
import sheathwright.wood.CrossSection;
import sheathwright.wood.Lumber;
import sheathwright.wood.Member;
import sheathwright.wood.Moisture;
import sheathwright.wood.RafterSections;
import sheathwright.wood.RafterSections.SectionProperties;
import sheathwright.wood.Seat;
import sheathwright.wood.ServiceConditions;
import sheathwright.wood.Stock;

/**
 * A job's rafters as they are screened, from what the job says and what is usual where it does not.
 */
final class OldRafters {

  private static final double ONE_PERSON = 250;
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
            job.fact(JobFields.SUPPORT_SPACING),
            DRY_WOOD)
        .as("rafters_psf", Units.PSF);
  }

  static SectionProperties section(Job job) {
    return RafterSections.sectionProperties(job.fact(FramingFields.RAFTER_SIZE), actual(job));
  }

  /** The stick that every rafter is. */
  static Member member(Job job) {
    return new Member(
        Lumber.of(
            job.fact(FramingFields.SPECIES),
            job.fact(FramingFields.GRADE),
            job.fact(FramingFields.RAFTER_SIZE),
            job.fact(FramingFields.VALUE_SET)),
        actual(job),
        ServiceConditions.of(job.wordOr(FramingFields.MOISTURE, Moisture.STAYS_DRY))
            .temperature(job.factOr(FramingFields.TEMPERATURE, 70)),
        job.wordOr(FramingFields.INCISED, YesNo.NO));
  }

  private static ActualSize actual(Job job) {
    return ActualSize.of(job.wordOr(FramingFields.RAFTER_STOCK, Stock.DRESSED))
        .thickness(job.factOr(FramingFields.RAFTER_THICKNESS, 0))
        .depth(job.factOr(FramingFields.RAFTER_DEPTH, 0));
  }

  /** Where every rafter bears. */
  static Seat seat(Job job) {
    return Seat.of(job.fact(FramingFields.BEARING))
        .endDistance(job.factOr(FramingFields.END_DISTANCE, 0));
  }

  static RafterScreening screening(Job job, Figure<Pressure> dead) {
    return RafterScreenings.rafterScreening(
        OldRafter.of(member(job), job.fact(JobFields.SUPPORT_SPACING), triangle(job))
            .seasoned(job.wordOr(FramingFields.SEASONED, YesNo.NO)),
        Birdsmouth.of(seat(job)).notch(job.factOr(FramingFields.NOTCH, 0)),
        loads(job, dead),
        deckOff(job, dead),
        sagLimits(job)
            .total(job.factOr(FramingFields.TOTAL_DEFLECTION_LIMIT, 0)));
  }

  /** What hangs from the rafters is asked for; unknown, it is no more than the whole dead load. */
  private static DeckOff deckOff(Job job, Figure<Pressure> dead) {
    return DeckOff.braceSpacing(job.factOr(FramingFields.BRACE_SPACING, 0))
        .live(job.factOr(FramingFields.DECK_OFF_LIVE, USUAL_ROOF_LIVE))
        .person(job.factOr(FramingFields.PERSON, ONE_PERSON))
        .stack(job.factOr(FramingFields.STACK, 0))
        .hung(job.knows(FramingFields.HUNG) ? job.fact(FramingFields.HUNG) : dead);
  }

  /** As it is given, or as the ceiling says. */
  static SagLimits sagLimits(Job job) {
    return job.knows(SiteFields.CEILING)
        ? SagLimits.under(job.fact(SiteFields.CEILING))
        : SagLimits.live(job.fact(FramingFields.DEFLECTION_LIMIT));
  }

  private static RoofTriangle triangle(Job job) {
    return RoofTriangle.span(job.fact(FramingFields.SPAN))
        .rise(job.factOr(FramingFields.RISE, 3))
        .tieHeight(job.factOr(FramingFields.TIE_HEIGHT, 0));
  }

  private static RoofLoads loads(Job job, Figure<Pressure> dead) {
    Figure<Pressure> given = job.fact(FramingFields.LIVE);
    Condition isSnow = job.fact(FramingFields.LOAD).is(RafterLoad.SNOW);
    return RoofLoads.dead(dead)
        .roofLive(
            Figure.choose(isSnow, job.factOr(FramingFields.ROOF_LIVE, USUAL_ROOF_LIVE), given)
                .as("roof_live_taken_psf", Units.PSF))
        .snow(Figure.choose(isSnow, given, NO_SNOW).as("snow_taken_psf", Units.PSF));
  }
}
