package sheathwright;

import java.util.List;

/**
 * How much of a long walk is gone: a sample that is the same every time, or with {@code
 * -Dsheathwright.sweep=all} each step of it (src/build/sweep.sh).
 */
public final class Walk {

  private static final boolean IS_WHOLE =
      System.getProperty("sheathwright.sweep", "").equals("all");

  private Walk() {}

  public static boolean isWhole() {
    return IS_WHOLE;
  }

  /** One of some choices stands for all: the first and the last of them in turn. */
  public static <T> List<T> of(List<T> choices, int turn) {
    return IS_WHOLE || choices.size() <= 1
        ? choices
        : List.of(choices.get(turn % 2 == 0 ? choices.size() - 1 : 0));
  }

  /** Whether this step is gone where each takes seconds: one of three. */
  public static boolean takes(int step) {
    return IS_WHOLE || step % 3 == 0;
  }
}
