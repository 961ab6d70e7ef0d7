package sheathwright.sheathing.layout;

import sheathwright.figure.Option;

/** What is done with the strip that whole courses leave at the ridge. */
public enum StripRule implements Option<StripRule> {
  /** Rip it out of whole sheets, as narrow as it is. */
  RIP,
  /** Make the last whole course and the strip two equal courses. */
  EQUAL,
  /** Make them one course of what is over two feet, and one of two feet at the ridge. */
  TWO_FOOT
}
