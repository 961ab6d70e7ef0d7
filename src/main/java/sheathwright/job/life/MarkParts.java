package sheathwright.job.life;

import static java.util.stream.Collectors.joining;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Rounding;
import sheathwright.figure.Shown;

/**
 * How much of a line is for which mark, as the table of order lines writes it: {@code 4: 1, 5: 0.5
 * typed}. A mark may be split between what is in the price and what is not, so each says how much;
 * and whether its action was typed then, so that one which is typed later can be told.
 *
 * @param all of them by their mark, in the order in which they are written
 */
public record MarkParts(Map<String, Part> all) {

  /**
   * The part of one mark.
   *
   * @param quantity how much of the line is for it
   * @param isTyped whether its action was typed when the line was written
   */
  public record Part(double quantity, boolean isTyped) {}

  private static final String TYPED = "typed";
  private static final Pattern PART =
      Pattern.compile("\\s*(\\S.*?)\\s*:\\s*(-?\\d+(?:\\.\\d+)?)(\\s+" + TYPED + ")?\\s*(?:,|$)");
  private static final int DECIMALS = 9;
  private static final Part NONE = new Part(0, false);

  /**
   * The parts that a cell writes.
   *
   * @throws RefusedException if it is written otherwise, or a mark stands there twice
   */
  public static MarkParts read(String text) {
    Map<String, Part> parts = new LinkedHashMap<>();
    Matcher matcher = PART.matcher(text);
    int end = 0;
    while (end < text.length() && matcher.find(end) && matcher.start() == end) {
      Part part = new Part(Double.parseDouble(matcher.group(2)), matcher.group(3) != null);
      if (parts.put(matcher.group(1), part) != null) {
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

  /** The same, each mark by another name. */
  public MarkParts named(UnaryOperator<String> names) {
    Map<String, Part> named = new LinkedHashMap<>();
    all.forEach((mark, part) -> named.put(names.apply(mark), part));
    return new MarkParts(named);
  }

  /** The part of a mark; nothing where it is not named. */
  public Part of(String mark) {
    return all.getOrDefault(mark, NONE);
  }

  /** All of them together. */
  public double sum() {
    return all.values().stream().mapToDouble(Part::quantity).sum();
  }

  /** As a cell writes them. */
  public String text() {
    return all.entrySet().stream()
        .map(part -> part.getKey() + ": " + written(part.getValue()))
        .collect(joining(", "));
  }

  private static String written(Part part) {
    return Shown.plain(Rounding.halfUp(part.quantity(), DECIMALS))
        + (part.isTyped() ? " " + TYPED : "");
  }
}
