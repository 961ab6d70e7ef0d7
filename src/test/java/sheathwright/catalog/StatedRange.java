package sheathwright.catalog;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a parameter's text says that it may be: {@code 4 in to 48 in}, {@code 0 to 500}, {@code 180
 * or 240}.
 *
 * @param least the first number stated
 * @param most the last number stated
 * @param unit as it is written behind the numbers; empty if nothing is
 * @param onlyTheEnds whether the two are alternatives
 */
record StatedRange(double least, double most, String unit, boolean onlyTheEnds) {

  private static final String NUMBER = "(-?\\d+(?:\\.\\d+)?)";
  private static final Pattern RANGE =
      Pattern.compile("(?<![\\w.])" + NUMBER + "( \\D[^,;:]*?)? to " + NUMBER + "\\2?(?=[,;.)]|$)");
  private static final Pattern ALTERNATIVES =
      Pattern.compile("(?<![\\w.])" + NUMBER + " or " + NUMBER + "(?=[,;.)]|$)");

  /** The range that a text states first; null if it states none. */
  static StatedRange in(String text) {
    Matcher range = RANGE.matcher(text);
    if (range.find()) {
      return new StatedRange(
          Double.parseDouble(range.group(1)),
          Double.parseDouble(range.group(3)),
          range.group(2) == null ? "" : range.group(2).strip(),
          false);
    }
    Matcher alternatives = ALTERNATIVES.matcher(text);
    return alternatives.find()
        ? new StatedRange(
            Double.parseDouble(alternatives.group(1)),
            Double.parseDouble(alternatives.group(2)),
            "",
            true)
        : null;
  }
}
