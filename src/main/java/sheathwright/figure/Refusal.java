package sheathwright.figure;

/**
 * Why there is no number here. A refused figure keeps its formula and passes the reason on to
 * whatever is computed from it, until somebody asks for the value.
 *
 * @param reason one line: what was given, what is allowed, whose rule, something right to try; or
 *     the words that stand in the number's place
 * @param isAnswer whether having no number is the answer itself, such as {@code no limit}
 */
public record Refusal(String reason, boolean isAnswer) {

  Refusal(String reason) {
    this(reason, false);
  }

  /** That there is no number to give, and these words instead. */
  static Refusal absence(String words) {
    return new Refusal(words, true);
  }

  /** The same for whatever is computed from what has no number. */
  Refusal passedOn() {
    return isAnswer ? new Refusal("nothing can be computed from \"" + reason + "\"") : this;
  }

  RefusedException raised() {
    return new RefusedException(isAnswer ? "there is no number: " + reason : reason);
  }
}
