package sheathwright.proof;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Shown;
import sheathwright.figure.Word;

/** What was checked of a function, in words. */
public final class Told {

  private Told() {}

  /** How many cases of each kind: {@code 35 independent, 5 limit}. */
  public static String kinds(Map<? extends Word, Integer> counts) {
    return counts.entrySet().stream()
        .map(each -> each.getValue() + " " + each.getKey().word())
        .collect(joining(", "));
  }

  /** How nearly all cases of a function hold: {@code the largest difference 0.48 lb/in, …}. */
  public static String nearness(Tested tested) {
    Optional<Difference> worst = tested.worst();
    if (worst.isEmpty()) {
      return "words alone, all the same";
    }
    Difference difference = worst.get();
    if (difference.difference() == 0) {
      return "none is off by anything";
    }
    String size = difference.inWords();
    return "largest difference %s%s"
        .formatted(size.isEmpty() ? "" : size + ", ", difference.shareInWords());
  }

  /** What was checked of a function in a line, behind its name. */
  public static String line(Tested tested) {
    if (!tested.hasCases()) {
      return "no certified case"
          + HeldBy.of(tested.card()).map("; held by tests, such as "::concat).orElse("");
    }
    return "%s certified %s (%s), %s; %s"
        .formatted(
            Shown.plain(tested.outcomes().size()),
            tested.outcomes().size() == 1 ? "case" : "cases",
            kinds(tested.kinds()),
            tested.holds() ? "all hold" : "%d do not hold".formatted(tested.failing()),
            nearness(tested));
  }

  /** All that is known of how a function was checked, a paragraph a line. */
  public static List<String> page(Tested tested) {
    List<String> lines = new ArrayList<>();
    lines.add(tested.card().name() + ": " + line(tested));
    if (tested.hasCases()) {
      lines.add("where they lie: " + kinds(tested.classes()));
      lines.add("expected by: " + String.join("; ", tested.sources()));
    }
    Evidence.of(tested.card()).forEach(each -> lines.add(each.words()));
    Disagreement.of(tested.card()).forEach(each -> lines.add(each.words()));
    return lines;
  }
}
