package sheathwright.life.bill;

import static java.util.stream.Collectors.joining;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;

/**
 * How much of a line is for which mark, as the table of order lines writes it: {@code 4: 1, 5:
 * 0.5}. A mark may be split between what is in the price and what is not, so each says how much.
 *
 * @param all of them by their mark, in the order in which they are written
 */
public record MarkParts(Map<String, Double> all) {

  private static final Pattern PART =
      Pattern.compile("\\s*(\\S.*?)\\s*:\\s*(-?\\d+(?:\\.\\d+)?)\\s*(?:,|$)");

  /**
   * The parts that a cell writes.
   *
   * @throws RefusedException if it is written otherwise, or a mark stands there twice
   */
  public static MarkParts read(String text) {
    Map<String, Double> parts = new LinkedHashMap<>();
    Matcher matcher = PART.matcher(text);
    int end = 0;
    while (end < text.length() && matcher.find(end) && matcher.start() == end) {
      if (parts.put(matcher.group(1), Double.valueOf(matcher.group(2))) != null) {
        throw refused(text, "mark " + matcher.group(1) + " stands there twice");
      }
      end = matcher.end();
    }
    if (end < text.length() || parts.isEmpty()) {
      throw refused(text, "each mark says how much of the line is for it");
    }
    return new MarkParts(parts);
  }

  private static RefusedException refused(String text, String why) {
    return new RefusedException(
        "\"%s\" is given; %s, such as \"4: 1, 5: 0.5\"; change-order writes it"
            .formatted(text, why));
  }

  /** How much of the line is for a mark; 0 where it is not named. */
  public double of(String mark) {
    return all.getOrDefault(mark, 0.0);
  }

  /** All of them together. */
  public double sum() {
    return all.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** As a cell writes them. */
  public String text() {
    return all.entrySet().stream()
        .map(part -> part.getKey() + ": " + Cells.number(part.getValue()))
        .collect(joining(", "));
  }
}
