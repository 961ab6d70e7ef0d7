package sheathwright.figure;

import java.util.List;

/**
 * Why there is no number here. A refused figure keeps its formula and passes the reason on to
 * whatever is computed from it, until somebody asks for the value.
 *
 * @param reason one line: what was given, what is allowed, whose rule, something right to try; or
 *     the words that stand in the number's place
 * @param isAnswer whether having no number is the answer itself, such as {@code no limit}
 * @param causes what was refused: the value in which the refusal arose. {@link Origins} leads from
 *     there to the inputs
 */
public record Refusal(String reason, boolean isAnswer, List<Traced> causes) {

  Refusal(String reason) {
    this(reason, false, List.of());
  }

  /** That there is no number to give, and these words instead. */
  static Refusal absence(String words) {
    return new Refusal(words, true, List.of());
  }

  /**
   * What has to be given and was not.
   *
   * @param allowed what may be given, in words
   */
  public static Refusal missing(String name, String allowed) {
    return new Refusal(name + " is missing; give " + allowed);
  }

  /** The same for whatever is computed from what has no number. */
  Refusal passedOn() {
    return isAnswer ? new Refusal("nothing can be computed from \"" + reason + "\"") : this;
  }

  /**
   * The refusal of a value: whoever is refused first is the cause, also of what follows from it.
   */
  static Refusal of(Traced value, Refusal refusal) {
    return refusal == null || !refusal.causes.isEmpty()
        ? refusal
        : new Refusal(refusal.reason, refusal.isAnswer, List.of(value));
  }

  RefusedException raised() {
    return new RefusedException(isAnswer ? "there is no number: " + reason : reason, causes);
  }
}
