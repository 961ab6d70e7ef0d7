package sheathwright.proof;

import sheathwright.figure.Word;

/** Where in a function's range a certified case lies. */
public enum CaseClass implements Word {
  ORDINARY,
  /** At an end of a range. */
  END,
  /** On a rounding step, or just beside it. */
  STEP,
  /** At the edge of a printed table. */
  EDGE,
  /** Where another check takes over. */
  GOVERNING,
  DEGENERATE
}
