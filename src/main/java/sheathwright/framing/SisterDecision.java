package sheathwright.framing;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Option;

/** What has to be said beside every result about a sister. */
public enum SisterDecision implements Option<SisterDecision> {
  /** The old rafter screens above what it can carry: a licensed engineer, before any repair. */
  ENGINEER_BEFORE_ANY_REPAIR,
  /** The old rafter screens within what it can carry; local code and an engineer still decide. */
  SCREENING_ONLY;

  /** By whether the old rafter, alone, is within what it can carry. */
  static Choice<SisterDecision> where(Condition rafterAloneIsEnough) {
    return Choice.choose(rafterAloneIsEnough, SCREENING_ONLY, ENGINEER_BEFORE_ANY_REPAIR)
        .as("decision");
  }
}
