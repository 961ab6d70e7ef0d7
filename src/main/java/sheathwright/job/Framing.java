package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.DeadLoad;
import sheathwright.framing.Grade;
import sheathwright.framing.Layer;
import sheathwright.framing.RafterCheck;
import sheathwright.framing.RafterLoad;
import sheathwright.framing.Rafters;
import sheathwright.framing.RepairDecision;
import sheathwright.framing.RoofMaterial;
import sheathwright.framing.Species;
import sheathwright.framing.StopFinding;
import sheathwright.framing.StopReports;
import sheathwright.framing.ValueSet;
import sheathwright.published.LumberSize;

/** What a job's rafters can carry, what was reported of them, and whether they may be repaired. */
public final class Framing {

  private static final Figure<Length> NO_THICKNESS = Figure.of(0, Units.INCH);

  private final RafterCheck rafters;
  private final Roll layers;
  private final StopReports reports;
  private final RepairDecision decision;

  Framing(Job job) {
    layers =
        job.layers().isEmpty()
            ? null
            : DeadLoad.roll(job.layers().stream().map(Framing::layer).toList());
    rafters = job.knowsItsRafters() ? check(job, dead(job)) : null;
    reports = new StopReports(job.reports().stream().map(Framing::report).toList());
    decision = rafters == null ? reports.decision() : reports.decision(rafters.ok().is(YesNo.YES));
  }

  private static RafterCheck check(Job job, Figure<Pressure> dead) {
    return Rafters.rafterCheck(
        job.<Species>word("species"),
        job.<Grade>word("grade"),
        job.<LumberSize>word("rafter_size"),
        job.fact("support_spacing_in", Units.INCH),
        job.fact("live_psf", Units.PSF),
        dead,
        job.<RafterLoad>word("load"),
        job.fact("deflection_limit", Units.RATIO),
        job.<ValueSet>word("value_set"),
        job.fact("span_ft", Units.FOOT),
        job.fact("bearing_in", Units.INCH));
  }

  private Figure<Pressure> dead(Job job) {
    return layers == null
        ? job.fact("dead_psf", Units.PSF)
        : DeadLoad.onProjection(layers, job.fact("rise_in_12", Units.RISE_IN_12));
  }

  @SuppressWarnings("unchecked") // the field says that it is a material
  private static Layer layer(Map<String, Traced> row) {
    return Layer.of(
        (Choice<RoofMaterial>) row.get("material"),
        Job.figure(row, "layers", Units.RATIO),
        row.containsKey("thickness_in")
            ? Job.figure(row, "thickness_in", Units.INCH)
            : NO_THICKNESS);
  }

  @SuppressWarnings("unchecked") // the fields say what each is
  private static StopReports.Report report(Map<String, Traced> row) {
    return new StopReports.Report(
        (Choice<String>) row.get("report"),
        (Choice<StopFinding>) row.get("seen"),
        (Choice<String>) row.get("where"),
        (Choice<String>) row.getOrDefault("evidence", Choice.literal("none")));
  }

  /** Each thing that was checked, in the order in which a proof lists it. */
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    rafters().map(RafterCheck::checks).ifPresent(checks::addAll);
    reported().ifPresent(roll -> checks.add(reports.check()));
    return checks;
  }

  /** The check of the rafters' strength, if the job says what they are. */
  public Optional<RafterCheck> rafters() {
    return Optional.ofNullable(rafters);
  }

  /** The layers of the roof that make its dead load, if the job lists them. */
  public Optional<Roll> layers() {
    return Optional.ofNullable(layers);
  }

  /** What was reported of the framing, if anything was. */
  public Optional<Roll> reported() {
    return Optional.of(reports.roll()).filter(roll -> !roll.rows().isEmpty());
  }

  /** What stands at the head of every repair list. */
  public Choice<RepairDecision.Decision> decision() {
    return decision.decision();
  }

  /** Whether the crew may repair the framing on its own word. */
  public Choice<YesNo> mayRepair() {
    return decision.mayRepair();
  }
}
