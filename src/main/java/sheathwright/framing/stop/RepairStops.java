package sheathwright.framing.stop;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/** What stops a crew from repairing framing on its own word, and who must decide instead. */
public final class RepairStops {

  static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Source RULE = Source.COMMON_PRACTICE;

  private RepairStops() {}

  /**
   * Whether the crew may repair the framing on its own word, from how far the existing rafter is
   * used up and what was seen; if not, who must decide.
   *
   * <pre>
   * stop where worst ratio &gt; 1, or anything of the list was seen
   * </pre>
   *
   * <p>Does not cover what the repair should be: where this says stop, somebody else writes that.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * framingStop(number(0.86), NOTHING).decision() // within the screening limits
   * framingStop(number(0.86), TRUSS).decision() // STOP: the truss designer or a licensed engineer decides before any repair
   * framingStop(number(2.783), NOTHING).mayRepair() // no
   * }</pre>
   *
   * @param worstRatio the greatest part used up of what the existing rafter may give, 0 to 1000
   * @param seen what was seen of the framing: nothing, truss, split, cut, bearing-rot, spread-wall
   * @return what stands at the head of the repair list, and whether the crew may repair
   * @throws RefusedException if the ratio lies outside its range
   * @see "common practice, no source; that trusses are their designer's alone is IRC R802.10.4,
   *     from memory"
   */
  @LibraryFunction(words = {"engineer", "truss", "permission", "stop work"})
  public static RepairDecision framingStop(
      @Column("worst_ratio") Figure<Ratio> worstRatio, @Column("seen") OneOf<StopFinding> seen) {
    var worst =
        worstRatio.within(
            "worst_ratio",
            Units.RATIO,
            Limits.between(0, 1000, "from rafter_check; 1 is the most"));
    var found = seen.choice().argument("seen");
    return decision(worst.isAtMost(ONE), stops(found), trusses(found));
  }

  /** One, if it stops the repair. */
  static Figure<Ratio> stops(Choice<StopFinding> seen) {
    return Figure.choose(seen.is(StopFinding.NOTHING), NONE, ONE).as("stops", Units.RATIO, RULE);
  }

  /** One, if it is for the truss designer as well. */
  static Figure<Ratio> trusses(Choice<StopFinding> seen) {
    return Figure.choose(seen.is(StopFinding.TRUSS), ONE, NONE).as("truss", Units.RATIO, RULE);
  }

  /** The decision where nothing was said of what was seen: by the old rafter's strength alone. */
  public static Choice<Decision> byStrength(Condition strong) {
    return Choice.choose(strong, Decision.WITHIN, Decision.STOP_ENGINEER).as("decision", RULE);
  }

  /** The decision from what is known of the rafters' strength and a count of what was seen. */
  static RepairDecision decision(Condition strong, Figure<Ratio> stops, Figure<Ratio> trusses) {
    return decision(strong, KnownFacts.ALL, stops, trusses);
  }

  /** The same, where not all that their strength rests on is known. */
  static RepairDecision decision(
      Condition strong, KnownFacts facts, Figure<Ratio> stops, Figure<Ratio> trusses) {
    var byStrength =
        Choice.choose(strong, facts.decision(), Decision.STOP_ENGINEER)
            .as("decision_by_strength", RULE);
    var nothingSeen = stops.isAtMost(NONE);
    return new RepairDecision(
        bySight(byStrength, stops, trusses),
        Condition.all(strong, facts.areSound(), nothingSeen).as("may_repair"));
  }

  /** The decision where nobody knows what the rafters are: nobody may repair what nobody checked. */
  static RepairDecision decision(
      Decision unchecked, Figure<Ratio> stops, Figure<Ratio> trusses) {
    return new RepairDecision(
        bySight(unchecked.choice(), stops, trusses), Choice.literal(YesNo.NO).as("may_repair"));
  }

  private static Choice<Decision> bySight(
      Choice<Decision> otherwise, Figure<Ratio> stops, Figure<Ratio> trusses) {
    var bySight =
        Choice.choose(stops.isAtMost(NONE), otherwise, Decision.STOP_ENGINEER)
            .as("decision_by_sight", RULE);
    return Choice.choose(trusses.isAtMost(NONE), bySight, Decision.STOP_TRUSS).as("decision", RULE);
  }
}
