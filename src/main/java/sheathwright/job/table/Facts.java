package sheathwright.job.table;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;

/** What somebody says of a thing, each fact by the field that it was read by. */
public interface Facts {

  /** Whether a fact was given. */
  boolean knows(Field<?> field);

  /** A fact as it was given. */
  <T extends Traced> T fact(Field<T> field);

  /** A number as it was given; else one that refuses because it is missing. */
  @SuppressWarnings("unchecked") // a field of figures has a unit of their quantity
  default <Q extends Quantity> Figure<Q> figure(Field<Figure<Q>> field) {
    return knows(field)
        ? fact(field)
        : Figure.missing(field.name(), (Unit<Q>) field.unit(), field.limits());
  }

  /** A word as it was given; else one that refuses because it is missing. */
  default <E extends Enum<E>> Choice<E> word(Field<Choice<E>> field) {
    return knows(field) ? fact(field) : Choice.missing(field.name(), field.options());
  }
}
