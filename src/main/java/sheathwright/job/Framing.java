package sheathwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.Grade;
import sheathwright.framing.RafterCheck;
import sheathwright.framing.RafterLoad;
import sheathwright.framing.Rafters;
import sheathwright.framing.RepairDecision;
import sheathwright.framing.Species;
import sheathwright.framing.StopFinding;
import sheathwright.framing.StopReports;
import sheathwright.framing.ValueSet;
import sheathwright.published.LumberSize;

/** What a job's rafters can carry, what was reported of them, and whether they may be repaired. */
public final class Framing {

  private final RafterCheck rafters;
  private final StopReports reports;
  private final RepairDecision decision;

  Framing(Job job) {
    rafters = job.knowsItsRafters() ? check(job) : null;
    reports = new StopReports(job.reports().stream().map(Framing::report).toList());
    decision = rafters == null ? reports.decision() : reports.decision(rafters.ok().is(YesNo.YES));
  }

  private static RafterCheck check(Job job) {
    return Rafters.rafterCheck(
        job.<Species>word("species"),
        job.<Grade>word("grade"),
        job.<LumberSize>word("rafter_size"),
        job.fact("support_spacing_in", Units.INCH),
        job.fact("live_psf", Units.PSF),
        job.fact("dead_psf", Units.PSF),
        job.<RafterLoad>word("load"),
        job.fact("deflection_limit", Units.RATIO),
        job.<ValueSet>word("value_set"),
        job.fact("span_ft", Units.FOOT),
        job.fact("bearing_in", Units.INCH));
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
