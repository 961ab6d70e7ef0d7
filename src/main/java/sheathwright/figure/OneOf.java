package sheathwright.figure;

/**
 * One of a closed set of words, either the bare option or a choice that remembers where it came
 * from. Functions take this, so that {@code SMOOTH} can be typed at the prompt and a drop-down can
 * drive the same formula.
 */
public interface OneOf<E> {

  /** The choice that stands for it in a formula. */
  Choice<E> choice();
}
