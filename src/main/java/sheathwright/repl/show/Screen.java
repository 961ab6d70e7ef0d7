package sheathwright.repl.show;

import java.util.Map;

/**
 * What answers are shown on.
 *
 * @param columns characters in a line
 * @param rows lines that can be seen at once; 0 where nobody sits in front of them
 * @param isColored whether a word may be given a color
 */
public record Screen(int columns, int rows, boolean isColored) {

  /** Of a window that does not say how wide it is. */
  private static final int USUAL_COLUMNS = 80;

  /** A narrower window is written over its edge rather than cut into syllables. */
  private static final int FEWEST_COLUMNS = 40;

  /** A line, one before, one after, and what the pager asks. */
  private static final int FEWEST_ROWS = 5;

  /** A pipe or a file: pictures of the usual width, whole answers, no color. */
  public static final Screen PIPE = new Screen(USUAL_COLUMNS, 0, false);

  /**
   * A terminal as it says that it is.
   *
   * @param columns its width; 0 if it does not say
   * @param rows its height; 0 if it does not say
   * @param type such as {@code xterm}; a {@code dumb} one takes no color
   * @param environment where {@code NO_COLOR}, set to anything, asks for none
   */
  public static Screen of(int columns, int rows, String type, Map<String, String> environment) {
    boolean isAskedForNone = !environment.getOrDefault("NO_COLOR", "").isEmpty();
    return new Screen(
        columns <= 0 ? USUAL_COLUMNS : Math.max(FEWEST_COLUMNS, columns),
        rows <= 0 ? 0 : Math.max(FEWEST_ROWS, rows),
        !type.startsWith("dumb") && !isAskedForNone);
  }
}
