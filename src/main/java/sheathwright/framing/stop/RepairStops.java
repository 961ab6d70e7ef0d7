package sheathwright.framing.stop;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.stop.RepairDecision.Decision;

/** What stops a crew from repairing framing on its own word, and who must decide instead. */
public final class RepairStops {

  static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Source RULE = Source.COMMON_PRACTICE;

  private RepairStops() {}

  /**
   * Whether the crew may repair the framing on its own word, from how far the existing rafter is
   * used up and what was seen; if not, who must decide, and what may go on meanwhile.
   *
   * <pre>
   * stop where worst ratio &gt; 1, or anything of the list was seen
   * </pre>
   *
   * <p>Does not cover what the repair should be: where this says stop, somebody else writes that.
   * Where several things were seen, ask for each: whoever decides about one does not decide about
   * the others. Whatever it answers: nobody walks on a deck that nobody has tried, cables are made
   * dead before they are cut or nailed near, old felt, siding, flues and loose pebbly insulation
   * may hold asbestos and paint from before 1978 lead, and no more is opened than can be closed.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * framingStop(number(0.86), NOTHING).decision() // within the screening limits
   * framingStop(number(0.86), TRUSS).decision() // STOP: the truss designer or a licensed engineer decides before any repair
   * framingStop(number(2.783), NOTHING).mayRepair() // no
   * framingStop(number(0.86), FIRE_RETARDANT_PANEL).decides() // the building official
   * framingStop(number(0.86), LIVE_WIRES).meanwhile() // work away from the wires, once they are marked
   * }</pre>
   *
   * @param worstRatio the highest demand over capacity of the existing rafter, 0 to 1000
   * @param seen what was seen: nothing, or a finding that stops a repair
   * @return what stands at the head of the repair list, whether the crew may repair, who decides,
   *     and what may go on meanwhile; where the rafter is used up beyond 1, whoever stands first in
   *     the order truss designer, engineer, electrician, environmental firm, building official,
   *     covering's maker
   * @throws RefusedException if the ratio lies outside its range
   * @see "common practice, no source, but where a finding names a code: IRC R302.2.2, R802.4.4 and
   *     R802.7.1.1, secondary source; IRC R802.4.5, R802.4.6, R802.5.2, R802.10.4 and R806, IEBC
   *     706.2, IBC 3302.1, 29 CFR 1926.416 and 1926.1101, 40 CFR 61.145, from memory"
   */
  @LibraryFunction(
      words = {
        "engineer",
        "truss",
        "permission",
        "stop work",
        "asbestos",
        "vermiculite",
        "wires",
        "rot",
        "insects",
        "fire",
        "slate",
        "solar",
        "tank"
      })
  public static StopAnswer framingStop(
      @Column("worst_ratio") Figure<Ratio> worstRatio, @Column("seen") OneOf<StopFinding> seen) {
    var worst =
        worstRatio.within(
            "worst_ratio",
            Units.RATIO,
            Limits.between(0, 1000, "from rafter_check; 1 is the most"));
    var found = seen.choice().argument("seen");
    var strength = ReckonedStops.strength(worst.isAtMost(ONE));
    var bySight = StopTable.order(found).as("order_by_sight", Units.RATIO);
    var byStrength = StopTable.order(strength).as("order_by_strength", Units.RATIO);
    var governs =
        Choice.choose(bySight.isAtLeast(byStrength), found, strength).as("governing_finding");
    var order = bySight.max(byStrength).as("order_of_who_decides", Units.RATIO, RULE);
    return new StopAnswer(
        decision(order, Decision.WITHIN),
        order.isAtMost(NONE).as("may_repair"),
        StopTable.decides(governs).as("decides", RULE),
        StopTable.meanwhile(governs).as("meanwhile", RULE));
  }

  /** One, if it stops the repair. */
  static Figure<Ratio> stops(Choice<StopFinding> seen) {
    return Figure.choose(seen.is(StopFinding.NOTHING), NONE, ONE).as("stops", Units.RATIO, RULE);
  }

  /** The decision where nothing was said of what was seen: by the old rafter's strength alone. */
  public static Choice<Decision> byStrength(Condition strong) {
    return Choice.choose(strong, Decision.WITHIN, Decision.STOP_ENGINEER).as("decision", RULE);
  }

  /**
   * The decision from the order of who decides.
   *
   * @param order the greatest among all that was found
   * @param nobodyDecides what is said where nothing was found
   */
  static Choice<Decision> decision(Figure<Ratio> order, OneOf<Decision> nobodyDecides) {
    Choice<Decision> decision = nobodyDecides.choice();
    for (Decider who : Decider.values()) {
      if (who != Decider.NOBODY) {
        decision =
            Choice.choose(order.isAtLeast(who.order()), who.decision(), decision)
                .as("decision_up_to_" + who.order().plain(), RULE);
      }
    }
    return decision.as("decision", RULE);
  }
}
