package sheathwright.figure;

import java.util.Optional;

/** Something that remembers how it came about: a number, a word, or a truth. */
public sealed interface Traced permits Figure, Choice, Condition {

  /** Its name in snake case with the unit at the end, or empty for a middle step. */
  String name();

  /** What it is called in a printed formula: the equation's letter, or its name in words. */
  String symbol();

  /** How it came about. */
  Step step();

  /** Where it, or the rule that made it, comes from. */
  Source source();

  /** Why it has no value, if it has none. */
  Optional<Refusal> refusal();

  /** Its value as a person reads it, with its unit; raises its refusal if it has none. */
  String shown();

  /**
   * Its value as a table holds it, without unit and with every digit; raises its refusal if it has
   * none.
   */
  String plain();

  /** Whether it carries a name of its own. */
  default boolean isNamed() {
    return !name().isEmpty();
  }
}
