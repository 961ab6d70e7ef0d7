package sheathwright.framing.rafter;

import sheathwright.figure.Option;

/** How much snow lies on the ground, as the code's table of heel joints has it in columns. */
public enum CodeSnow implements Option<CodeSnow> {
  NOT_SAID,
  TO_20,
  TO_30,
  TO_50,
  TO_70,
  OVER_70
}
