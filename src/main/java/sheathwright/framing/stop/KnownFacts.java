package sheathwright.framing.stop;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * How many of the facts that the rafters' checks rest on nobody knows, and how many are assumed.
 *
 * @param unknown facts without which nobody may say anything
 * @param assumed facts that were taken to be so until somebody looks
 */
public record KnownFacts(Figure<Ratio> unknown, Figure<Ratio> assumed) {

  /** Every fact was measured, read from a stamp, or told. */
  public static final KnownFacts ALL = new KnownFacts(RepairStops.NONE, RepairStops.NONE);

  /** Nobody said what the rafters are. */
  public static final KnownFacts NONE = ALL.butNobodyLooked();

  /** Where nothing was looked at besides. */
  KnownFacts butNobodyLooked() {
    return new KnownFacts(RepairStops.ONE, assumed);
  }

  /** Whether somebody knows each of them, or takes it to be so. */
  public Condition noneUnknown() {
    return unknown.isAtMost(RepairStops.NONE);
  }

  private Condition noneAssumed() {
    return assumed.isAtMost(RepairStops.NONE);
  }

  /** Whether a check that holds holds for what was found, and not for what was supposed. */
  public Condition areSound() {
    return Condition.all(noneUnknown(), noneAssumed());
  }

  /** The decision where the rafters are strong enough by these facts. */
  Choice<Decision> decision() {
    var known =
        Choice.choose(noneAssumed(), Decision.WITHIN, Decision.AS_ASSUMED)
            .as("decision_if_known", Source.COMMON_PRACTICE);
    return Choice.choose(noneUnknown(), known, Decision.NOT_INSPECTED)
        .as("decision_by_facts", Source.COMMON_PRACTICE);
  }

  /** A decision made by strength alone, which says within only as far as these facts do. */
  public Choice<Decision> atMost(Choice<Decision> byStrength) {
    return Choice.choose(byStrength.is(Decision.WITHIN), decision(), byStrength)
        .as("decision_as_far_as_known", Source.COMMON_PRACTICE);
  }

  /** What stands beside a check that holds by these facts. */
  public Choice<String> holding() {
    var known =
        Choice.choose(noneAssumed(), Choice.literal("holds"), Choice.literal("assumed"))
            .as("holds_if_known", Source.COMMON_PRACTICE);
    return Choice.choose(noneUnknown(), known, Choice.literal("not looked at"))
        .as("what_holds", Source.COMMON_PRACTICE);
  }
}
