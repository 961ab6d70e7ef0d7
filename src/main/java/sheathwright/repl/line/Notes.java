package sheathwright.repl.line;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What an answer says beside its numbers: the facts that it took, and what it assumed. */
final class Notes {

  private final Set<String> given = new LinkedHashSet<>();
  private final Set<String> assumed = new LinkedHashSet<>();

  void given(String fact) {
    given.add(fact);
  }

  void assumed(String preset) {
    assumed.add(preset);
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (!given.isEmpty()) {
      lines.add("given: " + String.join(", ", given));
    }
    if (!assumed.isEmpty()) {
      lines.add("assumed: " + String.join(", ", assumed));
    }
    return lines;
  }
}
