package sheathwright.life.bill;

import java.util.Arrays;
import java.util.Optional;
import sheathwright.figure.Word;

/** The options of an enum by the words that tables write for them. */
final class Words {

  private Words() {}

  /** The option that is written so, if there is one. */
  static <E extends Word> Optional<E> of(E[] options, String text) {
    return Arrays.stream(options).filter(option -> option.word().equals(text)).findFirst();
  }
}
