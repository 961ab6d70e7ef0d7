package sheathwright.wood;

import sheathwright.figure.Option;

/** How a stick came to its size; its nominal size alone does not say what it measures. */
public enum Stock implements Option<Stock> {
  /** Planed when dry, as a yard sells it. */
  DRESSED,
  /** Planed when green. */
  GREEN,
  /** Planed before about 1970. */
  PRE_1970,
  /** As thick and as deep as its name says. */
  FULL_SAWN,
  /** Taken from a rule. */
  MEASURED,
  /** Sawn lengthwise after it was graded: it has no grade any more. */
  RIPPED
}
