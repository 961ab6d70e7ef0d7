package sheathwright.workbook.book;

import java.util.List;
import java.util.stream.Stream;

/**
 * How much of a long walk is gone: a sample that is the same every time, or with {@code
 * -Dsheathwright.sweep=all} each step of it (src/build/sweep.sh).
 */
final class Walk {

  private static final boolean IS_WHOLE =
      System.getProperty("sheathwright.sweep", "").equals("all");

  private Walk() {}

  static boolean isWhole() {
    return IS_WHOLE;
  }

  /** The ends of some choices stand for those between. */
  static <T> List<T> of(List<T> choices) {
    return IS_WHOLE || choices.size() <= 2
        ? choices
        : Stream.of(0, choices.size() - 1).map(choices::get).toList();
  }
}
