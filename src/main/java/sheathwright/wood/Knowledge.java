package sheathwright.wood;

import sheathwright.figure.Option;

/**
 * How a fact of a roof is known. What nobody knows takes the worst that its source allows, or stops
 * the answer; it never passes for sound.
 */
public enum Knowledge implements Option<Knowledge> {
  /** Somebody held a rule to it, or a meter. */
  IS_MEASURED("measured"),
  /** It stands on the wood's own grade stamp, or on a plate. */
  IS_STAMPED("stamped"),
  /** Somebody who should know has said it, and it is written down who. */
  IS_TOLD("told"),
  /** Nobody looked, but it is taken to be so until somebody does. */
  IS_ASSUMED("assumed"),
  /** Nobody knows. */
  IS_UNKNOWN("unknown");

  private final String word;

  Knowledge(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
