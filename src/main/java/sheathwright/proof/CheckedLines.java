package sheathwright.proof;

import static java.util.stream.Collectors.joining;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sheathwright.figure.Traced;

/**
 * How each function was checked, as it was written when its cases were last run: whoever only tells
 * it runs none of them.
 */
public final class CheckedLines {

  private static final String FILE = "proof/checked.csv";

  private static final String FUNCTION = "function";
  private static final String CASES = "cases";
  private static final String SHARE = "share";
  private static final String CHECKED = "checked";

  private CheckedLines() {}

  /** The file as it is to be, of functions whose cases were run. */
  public static String table(List<Tested> tested) {
    StringBuilder lines =
        new StringBuilder(String.join(",", FUNCTION, CASES, SHARE, CHECKED)).append('\n');
    for (Tested each : tested) {
      lines.append(
          "%s,%s,%s,\"%s\"\n"
              .formatted(
                  each.card().name(),
                  each.hasCases() ? String.valueOf(each.outcomes().size()) : "",
                  each.worst().map(Difference::percentInWords).orElse("words alone"),
                  Told.line(each)));
    }
    return lines.toString();
  }

  /** A line for each function behind some values, its name before it. */
  public static List<String> behind(Collection<? extends Traced> values) {
    return lines(values).stream()
        .map(line -> line.get(FUNCTION) + ": " + line.get(CHECKED))
        .toList();
  }

  /** The same in two sentences at most: of those that have certified cases, and of the others. */
  public static List<String> inShort(Collection<? extends Traced> values) {
    List<Map<String, String>> lines = lines(values);
    String with =
        lines.stream()
            .filter(line -> !line.get(CASES).isEmpty())
            .map(
                line ->
                    "%s %s (%s)".formatted(line.get(FUNCTION), line.get(CASES), line.get(SHARE)))
            .collect(joining(", "));
    String without =
        lines.stream()
            .filter(line -> line.get(CASES).isEmpty())
            .map(line -> line.get(FUNCTION))
            .collect(joining(", "));
    return Stream.of(
            sentence(
                "Certified cases that each function answers, and how much of its tolerance its largest difference takes: ",
                with),
            sentence("Without a certified case: ", without))
        .filter(sentence -> !sentence.isEmpty())
        .toList();
  }

  private static String sentence(String begun, String listed) {
    return listed.isEmpty() ? "" : begun + listed + ".";
  }

  private static List<Map<String, String>> lines(Collection<? extends Traced> values) {
    List<String> used = UsedFunctions.behind(values);
    if (used.isEmpty()) {
      return List.of();
    }
    Map<String, Map<String, String>> checked = new LinkedHashMap<>();
    ShippedTable.lines(FILE).forEach(line -> checked.put(line.get(FUNCTION), line));
    return used.stream().map(checked::get).toList();
  }
}
