package sheathwright.workbook.book;

import java.util.List;
import java.util.stream.Stream;

/**
 * How much of a long walk is gone: a sample that is the same every time, or with {@code
 * -Dsheathwright.sweep=all} each step of it.
 */
final class Walk {

  private static final boolean IS_WHOLE =
      System.getProperty("sheathwright.sweep", "").equals("all");
  private static final int ONE_OF = 6;

  private Walk() {}

  /** The ends of some choices stand for those between. */
  static <T> List<T> of(List<T> choices) {
    return IS_WHOLE || choices.size() <= 2
        ? choices
        : Stream.of(0, choices.size() - 1).map(choices::get).toList();
  }

  /** Whether something is passed by, told by its name: two of three are. */
  static boolean passes(String name) {
    return !IS_WHOLE && Math.floorMod(name.hashCode(), ONE_OF) != 0;
  }
}
