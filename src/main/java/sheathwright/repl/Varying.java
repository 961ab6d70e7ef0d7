package sheathwright.repl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.repl.Uncompiled.Made;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Quoted;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.memory.VaryCall;
import sheathwright.repl.whatif.Runs;

/**
 * {@code vary("order", "waste", pct(5), pct(10))}: what one variable comes to for several values of
 * one or two others. The lines between them are run anew for each; nothing in the session changes.
 */
final class Varying {

  private static final Pattern LIST = Pattern.compile("(?s)List\\s*\\.\\s*of\\s*\\((.*)\\)");
  private static final String USAGE =
      "vary takes what is asked for, what is varied, and its values: vary(\"order\", \"waste\", pct(5), pct(10));"
          + " for two: vary(\"order\", \"waste\", List.of(pct(5), pct(10)), \"area\", List.of(sqft(900), sqft(1000)))";

  private final Definitions definitions;
  private final Runs apart;

  /**
   * Varies what is defined.
   *
   * @param apart runs lines without keeping what they make
   */
  Varying(Definitions definitions, Runs apart) {
    this.definitions = definitions;
    this.apart = apart;
  }

  /** What came of a line that varies; empty if it is another. */
  Optional<Made> made(String line) {
    return VaryCall.in(line).map(call -> made(call, line));
  }

  private Made made(VaryCall call, String line) {
    List<String> arguments = call.arguments();
    if (arguments.size() < 3) {
      throw new RefusedException(USAGE);
    }
    String asked = Quoted.text(arguments.get(0));
    Map<String, List<String>> inputs = inputs(arguments);
    checkMadeFrom(asked, inputs.keySet());
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Map<String, Object> run : apart.of(runs(inputs), Set.of(asked))) {
      Map<String, Object> row = new LinkedHashMap<>();
      inputs.keySet().forEach(name -> row.put(name, run.get(name)));
      row.put(asked, run.get(asked));
      rows.add(row);
    }
    Value value = new Value(Varied.of(rows), "Object");
    return new Made(call.name(), PlainLine.statement(line), value, List.of());
  }

  /** What is varied, each with its values as they were typed. */
  private static Map<String, List<String>> inputs(List<String> arguments) {
    Map<String, List<String>> inputs = new LinkedHashMap<>();
    if (!LIST.matcher(arguments.get(2)).matches()) {
      inputs.put(Quoted.text(arguments.get(1)), arguments.subList(2, arguments.size()));
      return inputs;
    }
    for (int i = 1; i + 1 < arguments.size(); i += 2) {
      Matcher list = LIST.matcher(arguments.get(i + 1));
      if (!list.matches()) {
        throw new RefusedException(USAGE);
      }
      inputs.put(Quoted.text(arguments.get(i)), VaryCall.parts(list.group(1)));
    }
    if (inputs.size() > 2) {
      throw new RefusedException("vary takes one or two variables to vary; " + USAGE);
    }
    return inputs;
  }

  /** Every combination of the values. */
  private static List<Map<String, String>> runs(Map<String, List<String>> inputs) {
    List<Map<String, String>> runs = new ArrayList<>(List.of(Map.of()));
    inputs.forEach(
        (name, values) -> {
          List<Map<String, String>> longer = new ArrayList<>();
          for (Map<String, String> run : runs) {
            for (String value : values) {
              Map<String, String> with = new LinkedHashMap<>(run);
              with.put(name, value);
              longer.add(with);
            }
          }
          runs.clear();
          runs.addAll(longer);
        });
    return runs;
  }

  private void checkMadeFrom(String asked, Set<String> varied) {
    for (String name : varied) {
      boolean isMadeFrom =
          definitions.of(name) == null
              || definitions.following(Set.of(name)).stream()
                  .anyMatch(each -> each.name().equals(asked));
      if (!isMadeFrom) {
        throw new RefusedException(
            "\"%s\" is not made from \"%s\"; vary takes two variables of which one is made from the other"
                .formatted(asked, name));
      }
    }
  }
}
