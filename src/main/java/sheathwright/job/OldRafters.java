package sheathwright.job;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.BearsOnWall;
import sheathwright.framing.rafter.Birdsmouth;
import sheathwright.framing.rafter.DeckOff;
import sheathwright.framing.rafter.OldRafter;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.framing.rafter.RafterScreenings;
import sheathwright.framing.rafter.RoofTriangle;
import sheathwright.framing.rafter.SagLimits;
import sheathwright.framing.rafter.Strut;
import sheathwright.job.path.PathFields;
import sheathwright.job.path.PathRafters;
import sheathwright.job.site.SiteFields;
import sheathwright.job.site.SiteSnow;
import sheathwright.loads.DeadLoads;
import sheathwright.loads.RoofLoads;
import sheathwright.wood.ActualSize;
import sheathwright.wood.CrossSection;
import sheathwright.wood.Lumber;
import sheathwright.wood.Member;
import sheathwright.wood.RafterSections;
import sheathwright.wood.RafterSections.SectionProperties;
import sheathwright.wood.Seat;
import sheathwright.wood.ServiceConditions;
import sheathwright.wood.WoodGravity;

/**
 * A job's rafters as they are screened, from what the job knows of them, the worst where nobody
 * knows, and what is usual of the rest.
 */
final class OldRafters {

  private static final double ONE_PERSON = 250;
  private static final double USUAL_ROOF_LIVE = 20;
  private static final double LEAST_RISE = 3;
  private static final Figure<Density> DRY_WOOD =
      Figure.constant("dry_wood_pcf", 34, Units.PCF, Source.COMMON_PRACTICE);
  private static final Figure<Pressure> NO_SNOW = Figure.of(0, Units.PSF);

  private final Job job;
  private final KnownRafters known;
  private final Figure<Pressure> siteSnow;

  OldRafters(Job job, KnownRafters known) {
    this.job = job;
    this.known = known;
    siteSnow =
        job.knows(FramingFields.LIVE) || !job.knows(SiteFields.GROUND_SNOW)
            ? null
            : SiteSnow.onRoof(job);
  }

  /** How what they are is known. */
  KnownRafters known() {
    return known;
  }

  /** What the rafters weigh themselves, which no list of layers holds. */
  Figure<Pressure> ownWeight() {
    SectionProperties section = section();
    return DeadLoads.framingLoad(
            CrossSection.thickness(section.thickness()).depth(section.depth()),
            job.fact(JobFields.SUPPORT_SPACING),
            DRY_WOOD)
        .as("rafters_psf", Units.PSF);
  }

  SectionProperties section() {
    return RafterSections.sectionProperties(job.fact(FramingFields.RAFTER_SIZE), actual());
  }

  /** The stick that every rafter is. */
  Member member() {
    return new Member(
        Lumber.of(
            known.species,
            known.grade,
            job.fact(FramingFields.RAFTER_SIZE),
            job.fact(FramingFields.VALUE_SET)),
        actual(),
        ServiceConditions.of(known.moisture).temperature(job.factOr(FramingFields.TEMPERATURE, 70)),
        job.wordOr(FramingFields.INCISED, YesNo.NO));
  }

  private ActualSize actual() {
    return ActualSize.of(known.stock)
        .thickness(job.factOr(FramingFields.RAFTER_THICKNESS, 0))
        .depth(job.factOr(FramingFields.RAFTER_DEPTH, 0));
  }

  /** Where every rafter bears. */
  Seat seat() {
    return Seat.of(job.fact(FramingFields.BEARING))
        .endDistance(job.factOr(FramingFields.END_DISTANCE, 0));
  }

  RafterScreening screening(Figure<Pressure> dead) {
    return RafterScreenings.rafterScreening(
        OldRafter.of(member(), job.fact(JobFields.SUPPORT_SPACING), triangle())
            .strut(strut())
            .seasoned(job.wordOr(FramingFields.SEASONED, YesNo.NO)),
        Birdsmouth.of(seat()).notch(job.factOr(FramingFields.NOTCH, 0)).known(known.notch()),
        loads(dead),
        deckOff(),
        sagLimits().total(job.factOr(FramingFields.TOTAL_DEFLECTION_LIMIT, 0)));
  }

  /** What hangs from the rafters is asked for; unknown, it is no more than the whole dead load. */
  private DeckOff deckOff() {
    DeckOff known =
        DeckOff.braceSpacing(job.factOr(FramingFields.BRACE_SPACING, 0))
            .live(job.factOr(FramingFields.DECK_OFF_LIVE, USUAL_ROOF_LIVE))
            .person(job.factOr(FramingFields.PERSON, ONE_PERSON))
            .stack(job.factOr(FramingFields.STACK, 0));
    return job.knows(FramingFields.HUNG) ? known.hung(job.fact(FramingFields.HUNG)) : known;
  }

  /** As it is given, or as the ceiling says. */
  private SagLimits sagLimits() {
    return job.knows(SiteFields.CEILING)
        ? SagLimits.under(job.fact(SiteFields.CEILING))
        : SagLimits.live(job.fact(FramingFields.DEFLECTION_LIMIT));
  }

  /** What a span is divided by for the sag under live load, on the job's slope. */
  Figure<Ratio> passingLimit() {
    return sagLimits().passing(job.factOr(FramingFields.RISE, LEAST_RISE));
  }

  /** The rafters as their joints are looked at. */
  PathRafters joined(Figure<Pressure> dead, Condition isKnown) {
    Member member = member();
    RoofLoads loads = loads(dead);
    return new PathRafters(
        triangle(),
        job.fact(JobFields.SUPPORT_SPACING),
        section().thickness(),
        WoodGravity.woodGravity(member.lumber().species()),
        member.service(),
        dead.plus(loads.roofLive().max(loads.snow())).as("load_of_the_joints_psf", Units.PSF),
        isKnown);
  }

  private RoofTriangle triangle() {
    return RoofTriangle.span(job.fact(FramingFields.SPAN))
        .rise(job.factOr(FramingFields.RISE, LEAST_RISE))
        .tieHeight(job.factOr(FramingFields.TIE_HEIGHT, 0));
  }

  /** Where nobody has said what it stands on, it is no support. */
  Strut strut() {
    return Strut.at(job.factOr(PathFields.STRUT, 0))
        .onWall(job.wordOr(PathFields.STRUT_ON_WALL, BearsOnWall.WALL_NOT_SEEN));
  }

  /** The live load: as it is given, or the snow that the ground's makes. */
  Figure<Pressure> live() {
    return siteSnow == null ? job.fact(FramingFields.LIVE) : siteSnow;
  }

  private RoofLoads loads(Figure<Pressure> dead) {
    Condition isSnow = job.fact(FramingFields.LOAD).is(RafterLoad.SNOW);
    if (siteSnow != null) {
      return RoofLoads.dead(dead)
          .roofLive(job.factOr(FramingFields.ROOF_LIVE, USUAL_ROOF_LIVE))
          .snow(
              siteSnow
                  .onlyIf(isSnow, "load is roof-live: give live_psf; ground snow makes snow alone")
                  .as("snow_taken_psf", Units.PSF));
    }
    Figure<Pressure> given = job.fact(FramingFields.LIVE);
    return RoofLoads.dead(dead)
        .roofLive(
            Figure.choose(isSnow, job.factOr(FramingFields.ROOF_LIVE, USUAL_ROOF_LIVE), given)
                .as("roof_live_taken_psf", Units.PSF))
        .snow(Figure.choose(isSnow, given, NO_SNOW).as("snow_taken_psf", Units.PSF));
  }
}
