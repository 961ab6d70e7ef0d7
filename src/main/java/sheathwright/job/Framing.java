package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.rafter.BearsOnWall;
import sheathwright.framing.rafter.RafterScreening;
import sheathwright.framing.sister.SisterSizes;
import sheathwright.framing.stop.CoveringChange;
import sheathwright.framing.stop.KnownFacts;
import sheathwright.framing.stop.ReckonedStops;
import sheathwright.framing.stop.RepairDecision;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.framing.stop.Ridge;
import sheathwright.framing.stop.StopFinding;
import sheathwright.framing.stop.StopReports;
import sheathwright.framing.stop.StopReports.Report;
import sheathwright.job.path.PathFields;
import sheathwright.job.path.PathRafters;
import sheathwright.job.path.Unsaid;
import sheathwright.job.table.Row;
import sheathwright.loads.DeadLoad;
import sheathwright.loads.DeadLoads;
import sheathwright.loads.Layer;
import sheathwright.loads.LayerFate;

/** What a job's rafters can carry, what was reported of them, and whether they may be repaired. */
public final class Framing {

  private static final Figure<Ratio> NOTHING_ASKED = Figure.of(0, Units.RATIO);
  private static final Figure<Length> NO_THICKNESS = Figure.of(0, Units.INCH);

  private final RafterScreening rafters;
  private final PathRafters joined;
  private final SisterSizes sisters;
  private final Roll layers;
  private final StopReports reports;
  private final KnownRafters known;
  private final KnownFacts facts;
  private final Choice<String> holding;
  private final RepairDecision decision;

  /**
   * The framing of a job.
   *
   * @param known how what its rafters are is known
   * @param said what it says of the joints, and what of them may be said later
   */
  Framing(Job job, KnownRafters known, Unsaid said) {
    layers =
        job.layers().isEmpty()
            ? null
            : DeadLoad.roll(job.layers().stream().map(Framing::layer).toList());
    boolean isKnown = job.knowsItsRafters();
    OldRafters old = new OldRafters(job, known);
    Figure<Pressure> dead = isKnown ? dead(job, old) : null;
    rafters = isKnown ? old.screening(dead) : null;
    this.known = known;
    sisters = isKnown && job.choosesSisters() ? SisterChoice.of(job, old, dead) : null;
    reports =
        new StopReports(job.reports().stream().map(Framing::report).toList(), reckoned(job, said));
    facts = reports.known(isKnown ? known.facts() : KnownFacts.NONE);
    holding = facts.holding();
    joined = isKnown ? old.joined(dead, facts.areSound()) : null;
    decision = isKnown ? reports.decision(facts) : reports.decision();
  }

  /** What follows from the job's numbers and words, as far as it gives them. */
  private List<Report> reckoned(Job job, Unsaid said) {
    List<Report> found = new ArrayList<>();
    if (job.knows(SurveyFields.IS_TRUSS)) {
      Condition areTrusses = job.fact(SurveyFields.IS_TRUSS).is(YesNo.YES);
      found.add(Report.reckoned("framed so", ReckonedStops.trusses(areTrusses), "every rafter"));
    }
    rafters()
        .map(screening -> screening.ok().is(YesNo.YES))
        .map(ReckonedStops::strength)
        .ifPresent(
            strength -> found.add(Report.reckoned("screening", strength, "the worst rafter")));
    if (job.knows(FramingFields.RISE)) {
      Choice<StopFinding> ridge =
          ReckonedStops.ridgeStop(
              job.fact(FramingFields.RISE), said.word(PathFields.RIDGE, Ridge.RIDGE_NOT_SEEN));
      found.add(Report.reckoned("slope", ridge, "the ridge"));
    }
    if (job.knows(PathFields.STRUT_ON_WALL)) {
      Condition standsOnNothing = job.fact(PathFields.STRUT_ON_WALL).is(BearsOnWall.ON_NO_WALL);
      found.add(
          Report.reckoned("strut", ReckonedStops.strut(standsOnNothing), "below the rafters"));
    }
    change()
        .map(ReckonedStops::coveringStop)
        .ifPresent(covering -> found.add(Report.reckoned("covering", covering, "the whole roof")));
    return found;
  }

  private Optional<CoveringChange> change() {
    return layers()
        .filter(DeadLoad::saysWhatChanges)
        .map(roll -> CoveringChange.from(DeadLoad.comingOff(roll)).to(DeadLoad.goingOn(roll)));
  }

  private Figure<Pressure> dead(Job job, OldRafters rafters) {
    return layers == null
        ? job.fact(FramingFields.DEAD)
        : DeadLoads.deadOnProjection(
            DeadLoad.onSlope(layers)
                .plus(rafters.ownWeight())
                .as("layers_and_rafters_psf", Units.PSF),
            job.fact(FramingFields.RISE));
  }

  @SuppressWarnings("unchecked") // the field says that it is a material
  private static Layer layer(Row row) {
    return Layer.of(
            row.of(FramingFields.MATERIAL),
            row.of(FramingFields.LAYER_COUNT),
            row.has(FramingFields.THICKNESS) ? row.of(FramingFields.THICKNESS) : NO_THICKNESS)
        .fate(row.has(FramingFields.FATE) ? row.of(FramingFields.FATE) : LayerFate.STAYS.choice());
  }

  private static Report report(Row row) {
    return new Report(
        row.of(FramingFields.REPORT),
        row.of(FramingFields.SEEN),
        row.of(FramingFields.WHERE),
        row.has(PlaceFields.EVIDENCE) ? row.of(PlaceFields.EVIDENCE) : Choice.literal("none"));
  }

  /** Each thing that was checked, in the order in which a proof lists it. */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    rafters().map(RafterScreening::checks).ifPresent(checks::addAll);
    if (!reports.findings().rows().isEmpty()) {
      checks.add(reports.check());
    }
    return checks;
  }

  /** The rafters as their joints are looked at, if the job says what they are. */
  Optional<PathRafters> joined() {
    return Optional.ofNullable(joined);
  }

  /** How many checks of the rafters hold or fail for what nobody knows. */
  Figure<Ratio> unmade() {
    return rafters == null
        ? NOTHING_ASKED
        : Figure.choose(
                facts.noneUnknown(), NOTHING_ASKED, Figure.of(rafters.checks().size(), Units.RATIO))
            .as("rafter_checks_not_looked_at", Units.RATIO);
  }

  /** What has to be said of sisters beside the rafters, as far as their facts are known. */
  public Optional<Choice<RepairDecision.Decision>> besideSisters() {
    return sisters().map(each -> known.sisterFacts(facts).atMost(each.decision()));
  }

  /** What sisters would do beside the rafters, if the job asks. */
  public Optional<SisterSizes> sisters() {
    return Optional.ofNullable(sisters);
  }

  /** The screening of the rafters, if the job says what they are. */
  public Optional<RafterScreening> rafters() {
    return Optional.ofNullable(rafters);
  }

  /** The layers of the roof that make its dead load, if the job lists them. */
  public Optional<Roll> layers() {
    return Optional.ofNullable(layers);
  }

  /** The greatest part used up of what the old rafters may give. */
  Figure<Ratio> greatestRatio() {
    Figure<Ratio> greatest = NOTHING_ASKED;
    int counted = 0;
    for (Check check : rafters.checks()) {
      counted++;
      greatest =
          greatest.max(check.ratio()).as("greatest_of_%s_ratios".formatted(counted), Units.RATIO);
    }
    return greatest;
  }

  /**
   * Whether nothing but their strength stops the repair: what was reported, or nobody looked at.
   */
  Condition nothingReported() {
    return Condition.all(reports.check().ok(), facts.areSound())
        .as("framing_is_free")
        .is(YesNo.YES);
  }

  /** What was taken of the rafters where their checks were made, labeled. */
  public Map<String, Choice<?>> taken() {
    return known.taken();
  }

  /** What the job does not say how it knows, so that it counts as unknown. */
  public List<String> unsaid() {
    return known.unsaid();
  }

  /** What stands beside a check that holds: that it does, or on what that rests. */
  public Choice<String> holding() {
    return holding;
  }

  /** All that was reported and reckoned of the framing, and who decides. */
  public StopReports stops() {
    return reports;
  }

  /** What was reported of the framing, if anything was. */
  public Optional<Roll> reported() {
    return Optional.of(reports.roll()).filter(roll -> !roll.rows().isEmpty());
  }

  /** What stands at the head of every repair list. */
  public Choice<Decision> decision() {
    return decision.decision();
  }

  /** Whether a quote may be signed above this: it is neither stopped nor uninspected. */
  public Condition mayBeSigned() {
    Choice<Decision> said = decision();
    return Condition.any(
            said.is(Decision.WITHIN), said.is(Decision.AS_ASSUMED), said.is(Decision.NOT_CHECKED))
        .as("may_be_signed")
        .is(YesNo.YES);
  }

  /** Whether the crew may repair the framing on its own word. */
  public Choice<YesNo> mayRepair() {
    return decision.mayRepair();
  }
}
