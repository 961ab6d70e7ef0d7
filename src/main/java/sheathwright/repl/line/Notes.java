package sheathwright.repl.line;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.figure.Shown;

/** What an answer says beside its numbers: the facts that it took, and what it assumed. */
final class Notes {

  private static final int WIDTH = 78; // they stand two to the right, in 80

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
    add(lines, "given: ", given);
    add(lines, "assumed: ", assumed);
    return lines;
  }

  private static void add(List<String> lines, String what, Set<String> each) {
    if (!each.isEmpty()) {
      lines.addAll(Shown.wrapped(what + String.join(", ", each), WIDTH, "", "  "));
    }
  }
}
