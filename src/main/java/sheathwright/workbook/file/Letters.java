package sheathwright.workbook.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * How wide words are in the letters of our workbooks, on a machine that may have no such font. The
 * widths are read from a table that {@code src/build/java/LetterWidths.java} has written from a
 * font whose letters are as wide.
 */
public final class Letters {

  private static final String TABLE = "/sheathwright/workbook/letters.csv";
  private static final double THOUSANDTHS = 1000;

  /** As wide as the widest, for a letter that the table lacks. */
  private static final int UNKNOWN = 1015;

  private static final Map<Integer, int[]> WIDTHS = read();

  private Letters() {}

  private static Map<Integer, int[]> read() {
    Map<Integer, int[]> widths = new HashMap<>();
    try (BufferedReader table =
        new BufferedReader(
            new InputStreamReader(
                Letters.class.getResourceAsStream(TABLE), StandardCharsets.UTF_8))) {
      table
          .lines()
          .filter(line -> Character.isDigit(line.charAt(0)))
          .map(line -> line.split(","))
          .forEach(
              line ->
                  widths.put(
                      Integer.valueOf(line[0]),
                      new int[] {Integer.parseInt(line[1]), Integer.parseInt(line[2])}));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return widths;
  }

  /**
   * The width of some words on one line, in points.
   *
   * @param size of the letters, in points
   */
  public static double wide(String words, double size, boolean isBold) {
    long sum = 0;
    for (int i = 0; i < words.length(); i++) {
      int[] widths = WIDTHS.get((int) words.charAt(i));
      sum += widths == null ? UNKNOWN : widths[isBold ? 1 : 0];
    }
    return sum * size / THOUSANDTHS;
  }

  /** How many lines some words take, broken between them, and within one that is wider still. */
  public static int lines(String words, double size, boolean isBold, double points) {
    int lines = 1;
    double space = wide(" ", size, isBold);
    double used = 0;
    for (String word : words.split(" ", -1)) {
      double wide = wide(word, size, isBold);
      double after = used == 0 ? wide : used + space + wide;
      if (after <= points) {
        used = after;
      } else {
        int more = (int) Math.ceil(wide / points);
        lines += used == 0 ? more - 1 : more;
        used = wide - (more - 1) * points;
      }
    }
    return lines;
  }
}
