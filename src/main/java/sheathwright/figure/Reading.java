package sheathwright.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * Reads figures and words as plain values for whoever solves with them, and remembers each one. Its
 * {@link Solution} is guarded by just what was read, so that no input can be forgotten.
 *
 * <p>A thing that holds plain values made earlier hands them to a reading only, which then has read
 * what they were made from: {@code plane.outline(reading)}.
 */
public final class Reading {

  private final boolean leadsToASolution;
  private final List<Solution.Input> read = new ArrayList<>();
  private final Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private boolean isSolved;

  /** Nothing read yet. */
  public Reading() {
    this(true);
  }

  private Reading(boolean leadsToASolution) {
    this.leadsToASolution = leadsToASolution;
  }

  /** A look at values that nothing is solved with: to draw them, or to refuse what cannot be. */
  public static Reading aside() {
    return new Reading(false);
  }

  /**
   * A figure as a plain number; raises its refusal if there is none.
   *
   * @param label what it is called when it has changed
   */
  public double number(String label, Figure<?> figure, Unit<?> unit) {
    remember(new Solution.Input(label, figure));
    return figure.in(unit).value();
  }

  /**
   * A word as itself; raises its refusal if there is none.
   *
   * @param label what it is called when it has changed
   */
  public <E> E word(String label, OneOf<E> word) {
    remember(new Solution.Input(label, word.choice()));
    return word.choice().value();
  }

  /** This with all that was read for something made earlier. */
  public Reading and(Reading earlier) {
    earlier.read.forEach(this::remember);
    return this;
  }

  /** Everything that was read, in order. */
  public List<Traced> values() {
    return read.stream().map(Solution.Input::value).toList();
  }

  private void remember(Solution.Input input) {
    if (isSolved) {
      throw new IllegalStateException(input.label() + " is read after the solution was made of it");
    }
    if (leadsToASolution && !input.value().step().isConstant() && seen.add(input.value())) {
      read.add(input);
    }
  }

  /**
   * What is found for everything that was read; nothing can be read afterwards. Where one of the
   * inputs was itself found by solving, whether that still holds counts as well.
   *
   * @param name what was solved, in snake case: {@code deck_layout}
   */
  public Solution solution(String name) {
    if (!leadsToASolution) {
      throw new IllegalStateException("nothing is solved with a look aside, so not " + name);
    }
    isSolved = true;
    return new Solution(name, read);
  }
}
