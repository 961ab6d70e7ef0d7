package sheathwright.figure;

/** A {@link Word} of an enum that can be handed straight to a function. */
public interface Option<E extends Enum<E> & Option<E>> extends Word, OneOf<E> {

  @Override
  @SuppressWarnings("unchecked") // an enum names itself as E
  default Choice<E> choice() {
    return Choice.literal((E) this);
  }
}
