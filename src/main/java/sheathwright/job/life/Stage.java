package sheathwright.job.life;

import sheathwright.figure.Option;

/** How far a job has come, in order. */
public enum Stage implements Option<Stage> {
  /** Somebody asked. */
  ASKED,
  /** Somebody looked. */
  SURVEYED,
  /** A price was, or can be, given. */
  QUOTED,
  /** The owner agreed to it. */
  AGREED,
  /** The old covering is off. */
  OPENED,
  /** The last invoice is written. */
  CLOSED;

  /** Whether a job has come so far. */
  public boolean isAtLeast(Stage other) {
    return compareTo(other) >= 0;
  }
}
