package sheathwright.repl.whatif;

import static java.util.stream.Collectors.joining;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Values;
import sheathwright.repl.show.TracedParts;

/**
 * What is asked for: a variable, or a part of the answer that one holds.
 *
 * @param part its name among the parts; empty if it is the only one
 * @param now what it comes to
 */
record Asked(String variable, String part, Figure<?> now) {

  /** What is asked for by a name. */
  static Asked of(String typed, Definitions definitions, Values values) {
    String name = typed.replace("()", "").replace('.', '_');
    String variable =
        definitions.variables().stream()
            .filter(each -> name.equals(each) || name.startsWith(each + "_"))
            .max(Comparator.comparingInt(String::length))
            .orElseThrow(
                () ->
                    new RefusedException(
                        "there is no \"%s\" to seek; there %s"
                            .formatted(
                                typed,
                                definitions.variables().isEmpty()
                                    ? "is no variable yet"
                                    : "are " + String.join(", ", definitions.variables()))));
    Map<String, Traced> parts = TracedParts.named(Map.of(variable, values.of(variable).object()));
    List<String> fitting =
        parts.keySet().stream()
            .filter(part -> part.equals(name) || part.startsWith(name + "_"))
            .toList();
    String part = fitting.contains(name) ? name : fitting.size() == 1 ? fitting.get(0) : "";
    if (parts.get(part) instanceof Figure<?> figure && figure.refusal().isEmpty()) {
      return new Asked(variable, part, figure);
    }
    String numbers =
        parts.entrySet().stream()
            .filter(each -> each.getValue() instanceof Figure<?>)
            .map(Map.Entry::getKey)
            .collect(joining(", "));
    throw new RefusedException(
        numbers.isEmpty() || numbers.equals(name)
            ? "%s is no number now; seek takes one".formatted(typed)
            : "%s is no one number; seek one of %s".formatted(typed, numbers));
  }

  /** The number itself among what a run has made. */
  Optional<Figure<?>> in(Object made) {
    return TracedParts.named(Map.of(variable, made)).get(part) instanceof Figure<?> figure
        ? Optional.of(figure)
        : Optional.empty();
  }
}
