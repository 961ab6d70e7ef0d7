package sheathwright.framing.stop;

import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Gather;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Roll;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * What was reported and reckoned of a job's roof, whether any of it stops the repair, and who
 * decides about each.
 */
public final class StopReports {

  private static final Roll.Column<Report> SEEN = Roll.column("seen", Report::seen);
  private static final Roll.Column<Report> REPORT = Roll.column("report", Report::report);

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
      Choice<String> evidence) {

    /** What follows from numbers of the job, and was not reported by anybody. */
    public static Report reckoned(String report, Choice<StopFinding> found, String from) {
      return new Report(
          Choice.literal(report), found, Choice.literal(from), Choice.literal("reckoned"));
    }
  }

  private final List<Report> all;
  private final Roll roll;
  private final Roll findings;
  private final Roll toCrew;
  private final Roll toInspector;
  private final Roll toHomeowner;
  private final Figure<Ratio> stops;
  private final Figure<Ratio> order;

  /**
   * The reports of a job.
   *
   * @param reports as they were given
   * @param reckoned what follows from its numbers, in the order in which it is told
   */
  public StopReports(List<Report> reports, List<Report> reckoned) {
    roll =
        Roll.of(
            "reports",
            "the reports on the framing",
            reports,
            REPORT,
            SEEN,
            Roll.column("where", Report::where),
            Roll.column("evidence", Report::evidence));
    all = Stream.concat(reports.stream(), reckoned.stream()).toList();
    findings =
        Roll.of(
            "findings",
            "what was found",
            all,
            SEEN,
            Roll.column("meanwhile", report -> StopTable.meanwhile(report.seen())),
            Roll.column("decides", report -> StopTable.decides(report.seen())),
            REPORT,
            Roll.column("stops", report -> RepairStops.stops(report.seen())),
            Roll.column("order", report -> StopTable.order(report.seen())));
    toCrew =
        Roll.of(
            "findings_to_crew",
            "what is said to the crew",
            all,
            SEEN,
            Roll.column("said", report -> StopTable.toCrew(report.seen())),
            Roll.column("where", Report::where),
            REPORT);
    toInspector =
        Roll.of(
            "findings_to_inspector",
            "what is said to the inspector",
            all,
            SEEN,
            Roll.column("said", report -> StopTable.toInspector(report.seen())),
            Roll.column("source", report -> StopTable.sourceOf(report.seen())),
            REPORT);
    toHomeowner =
        Roll.of(
            "findings_to_homeowner",
            "what is said in plain words",
            all,
            SEEN,
            Roll.column("said", report -> StopTable.toHomeowner(report.seen())),
            Roll.column("where", Report::where),
            REPORT);
    stops = gathered(Gather.SUM, "stops").as("findings_that_stop", Units.RATIO);
    order = gathered(Gather.GREATEST, "order").as("order_of_who_decides", Units.RATIO);
  }

  private Figure<Ratio> gathered(Gather how, String column) {
    return findings.rows().isEmpty()
        ? RepairStops.NONE
        : findings.gathered(how, column, Units.RATIO);
  }

  /** Each finding that stops the repair as it is now, in a line: who decides, what may go on. */
  public List<String> lines() {
    return all.stream()
        .filter(report -> report.seen().value() != StopFinding.NOTHING)
        .map(
            report ->
                "%s (%s, %s): %s decides; meanwhile: %s"
                    .formatted(
                        report.seen(),
                        report.report(),
                        report.where(),
                        StopTable.decides(report.seen()),
                        StopTable.meanwhile(report.seen())))
        .toList();
  }

  /** The reports as they were given, a line each. */
  public Roll roll() {
    return roll;
  }

  /** All that was reported and reckoned, with what may go on and who decides. */
  public Roll findings() {
    return findings;
  }

  /** The same with what is said to whoever stands on the roof. */
  public Roll toCrew() {
    return toCrew;
  }

  /** The same with what is said to the inspector and the office, and by what source. */
  public Roll toInspector() {
    return toInspector;
  }

  /** The same with what is said to whoever lives there. */
  public Roll toHomeowner() {
    return toHomeowner;
  }

  /** None may stop the repair. */
  public Check check() {
    return Check.noneOf("findings that stop the repair", stops);
  }

  /**
   * What is known, once it is taken into account whether anybody looked at the framing: without a
   * report nobody did.
   */
  public KnownFacts known(KnownFacts facts) {
    return roll.rows().isEmpty() ? facts.butNobodyLooked() : facts;
  }

  /**
   * The decision, where the rafters' strength is among what was reckoned.
   *
   * @param facts that it rests on, and that somebody looked
   */
  public RepairDecision decision(KnownFacts facts) {
    return new RepairDecision(
        RepairStops.decision(order, facts.decision()),
        Condition.all(stops.isAtMost(RepairStops.NONE), facts.areSound()).as("may_repair"));
  }

  /**
   * The decision where nobody knows what the rafters are: nobody may repair what nobody checked.
   */
  public RepairDecision decision() {
    return new RepairDecision(
        RepairStops.decision(
            order, roll.rows().isEmpty() ? Decision.NOT_INSPECTED : Decision.NOT_CHECKED),
        Choice.literal(YesNo.NO).as("may_repair"));
  }
}
