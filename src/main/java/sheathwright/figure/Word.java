package sheathwright.figure;

import java.util.List;
import java.util.Locale;

/**
 * An option with a fixed set of brothers, written in lower case with hyphens: {@code
 * douglas-fir-larch}.
 */
public interface Word {

  /** The name of the constant. */
  String name();

  /** Another way in which people write it, lower case; empty if there is none. */
  default String alsoWritten() {
    return "";
  }

  /** What the trade calls it for short, in any case: {@code SPF}. */
  default List<String> inTheTrade() {
    return List.of();
  }

  /** As it is written in tables, cells and answers. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
