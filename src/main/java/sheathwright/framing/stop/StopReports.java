package sheathwright.framing.stop;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/** What was reported of a job's framing, and whether any of it stops the repair. */
public final class StopReports {

  /**
   * One report.
   *
   * @param report its number or name
   * @param seen what it says
   * @param where the place, in words
   * @param evidence what shows it; may be empty
   */
  public record Report(
      Choice<String> report,
      Choice<StopFinding> seen,
      Choice<String> where,
      Choice<String> evidence) {}

  private final Roll roll;
  private final Figure<Ratio> stops;
  private final Figure<Ratio> trusses;

  /**
   * The reports of a job, as they were given.
   *
   * @param areTrusses whether its rafters are trusses, if the job says so
   */
  public StopReports(List<Report> reports, Optional<Choice<YesNo>> areTrusses) {
    roll =
        Roll.of(
            "reports",
            "the reports on the framing",
            reports,
            Roll.column("report", Report::report),
            Roll.column("seen", Report::seen),
            Roll.column("where", Report::where),
            Roll.column("evidence", Report::evidence),
            Roll.column("stops", report -> RepairStops.stops(report.seen())),
            Roll.column("truss", report -> RepairStops.trusses(report.seen())));
    Figure<Ratio> all =
        areTrusses
            .map(
                truss ->
                    Figure.choose(truss.is(YesNo.YES), RepairStops.ONE, RepairStops.NONE)
                        .as("rafters_are_trusses", Units.RATIO))
            .orElse(RepairStops.NONE);
    stops = count("stops").plus(all).as("reports_that_stop", Units.RATIO);
    trusses = count("truss").plus(all).as("reports_of_trusses", Units.RATIO);
  }

  private Figure<Ratio> count(String column) {
    return roll.rows().isEmpty() ? RepairStops.NONE : roll.sum(column, Units.RATIO);
  }

  /** The reports, a line each, with a one where the report stops the repair. */
  public Roll roll() {
    return roll;
  }

  /** None may stop the repair. */
  public Check check() {
    return Check.noneOf("reports that stop the repair", stops);
  }

  /**
   * What is known, once it is taken into account whether anybody looked at the framing: without a
   * report nobody did.
   */
  public KnownFacts known(KnownFacts facts) {
    return roll.rows().isEmpty() ? facts.butNobodyLooked() : facts;
  }

  /**
   * The decision beside what is known of the rafters' strength.
   *
   * @param facts that it rests on, and that somebody looked
   */
  public RepairDecision decision(Condition strong, KnownFacts facts) {
    return RepairStops.decision(strong, facts, stops, trusses);
  }

  /** The decision where nobody knows what the rafters are. */
  public RepairDecision decision() {
    return RepairStops.decision(
        roll.rows().isEmpty() ? Decision.NOT_INSPECTED : Decision.NOT_CHECKED, stops, trusses);
  }
}
