package sheathwright.repl.whatif;

import java.util.Optional;
import sheathwright.figure.Figure;

/** What a search has come to. */
sealed interface Sought {

  /** One value, and what comes of it; nothing if it has no answer. */
  record Tried(double value, Optional<Figure<?>> answer) {}

  /**
   * A value gives the answer.
   *
   * @param least from which on values near it give the same answer
   * @param most up to which they do
   * @param isStep whether the answer stays the same between the two and then jumps
   * @param below the next value below those, if one was looked at
   * @param above the next value above those, if one was looked at
   */
  record Given(
      Tried found,
      double least,
      double most,
      boolean isStep,
      Optional<Tried> below,
      Optional<Tried> above)
      implements Sought {}

  /** The answer jumps over what is sought between two neighbors. */
  record Jumped(Tried left, Tried right) implements Sought {}

  /**
   * No value gives the answer.
   *
   * @param least the value tried that gives the least answer
   * @param most the value tried that gives the greatest
   * @param from the least value tried that has an answer
   * @param to the greatest
   */
  record Nowhere(Tried least, Tried most, double from, double to) implements Sought {}

  /** No value that was tried has an answer at all. */
  record Unanswered(double from, double to) implements Sought {}
}
