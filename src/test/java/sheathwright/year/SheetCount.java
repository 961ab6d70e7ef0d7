package sheathwright.year;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How many places of sheets are bad, counted over the rows of the marks: each place once, without
 * those that were taken back, that nobody is billed for, that wait for an engineer, or that the
 * owner refused.
 *
 * @param statuses what became of each change order
 */
record SheetCount(
    List<Map<String, String>> marks,
    List<Map<String, String>> lines,
    Map<String, String> statuses) {

  /**
   * The count; nothing where it depends on which of two marks of a place is the one that counts.
   */
  Optional<Integer> places() {
    Map<String, List<Map<String, String>>> byPlace = new LinkedHashMap<>();
    for (Map<String, String> mark : marks) {
      if (mark.get("finding").equals("rot")) {
        byPlace.computeIfAbsent(mark.get("sheet"), key -> new ArrayList<>()).add(mark);
      }
    }
    int count = 0;
    for (List<Map<String, String>> place : byPlace.values()) {
      boolean isCounted = isCounted(place.get(0));
      if (place.stream().anyMatch(mark -> isCounted(mark) != isCounted)) {
        return Optional.empty();
      }
      count += isCounted ? 1 : 0;
    }
    return Optional.of(count);
  }

  private boolean isCounted(Map<String, String> mark) {
    return !mark.getOrDefault("void", "").equals("yes")
        && !mark.getOrDefault("bill", "").equals("none")
        && !mark.getOrDefault("action", "").equals("stop")
        && !isRefused(mark.get("mark"));
  }

  private boolean isRefused(String mark) {
    return lines.stream()
        .filter(line -> statuses.getOrDefault(line.get("order"), "").equals("refused"))
        .filter(line -> line.get("item").equals("sheet"))
        .flatMap(line -> List.of(line.get("marks").split(", ")).stream())
        .anyMatch(
            part ->
                part.startsWith(mark + ":")
                    && !part.substring(part.indexOf(':') + 1).strip().startsWith("-"));
  }
}
