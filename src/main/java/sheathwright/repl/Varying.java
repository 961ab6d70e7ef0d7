package sheathwright.repl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.repl.Uncompiled.Made;
import sheathwright.repl.memory.Block.Step;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Quoted;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.memory.VaryCall;

/**
 * {@code vary("order", "waste", pct(5), pct(10))}: what one variable comes to for several values of
 * one or two others. The lines between them are run anew for each; nothing in the session changes.
 */
final class Varying {

  private static final Pattern LIST = Pattern.compile("(?s)List\\s*\\.\\s*of\\s*\\((.*)\\)");
  private static final Pattern LINE =
      Pattern.compile("(?s)\\s*(?:var\\s+)?[A-Za-z_]\\w*\\s*=(?!=).*");
  private static final String USAGE =
      "vary takes what is asked for, what is varied, and its values: vary(\"order\", \"waste\", pct(5), pct(10));"
          + " for two: vary(\"order\", \"waste\", List.of(pct(5), pct(10)), \"area\", List.of(sqft(900), sqft(1000)))";

  private final Definitions definitions;
  private final Function<List<Step>, List<Object>> apart;
  private final UnaryOperator<String> read;

  /**
   * Varies what is defined.
   *
   * @param apart runs lines without keeping what they make, and tells it
   * @param read reads a line as Java
   */
  Varying(
      Definitions definitions,
      Function<List<Step>, List<Object>> apart,
      UnaryOperator<String> read) {
    this.read = line -> asNew(read.apply(line));
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
    List<Definition> between = between(asked, inputs.keySet());
    List<Step> steps = new ArrayList<>();
    List<Map<String, String>> runs = runs(inputs);
    for (Map<String, String> run : runs) {
      run.forEach((name, value) -> steps.add(step(name, read.apply(name + " = " + value))));
      between.forEach(each -> steps.add(step(each.name(), asNew(each.source()))));
    }
    List<Object> made = apart.apply(steps);
    int each = inputs.size() + between.size();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int run = 0; run < runs.size(); run++) {
      Map<String, Object> row = new LinkedHashMap<>();
      int at = run * each;
      for (String name : inputs.keySet()) {
        row.put(name, made.get(at++));
      }
      row.put(asked, made.get((run + 1) * each - 1));
      rows.add(row);
    }
    Value value = new Value(Varied.of(rows), "Object");
    return new Made(call.name(), PlainLine.statement(line), value, List.of());
  }

  private static Step step(String name, String source) {
    return new Step(0, name, source, false, null);
  }

  private static String asNew(String source) {
    String line = PlainLine.statement(source);
    return line.startsWith("var ") ? line : "var " + line;
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

  /** The lines that lead from what is varied to what is asked for, in order. */
  private List<Definition> between(String asked, Set<String> varied) {
    for (String name : varied) {
      if (definitions.of(name) == null) {
        throw new RefusedException(
            "there is no variable \"%s\" to vary; there are %s"
                .formatted(name, String.join(", ", definitions.variables())));
      }
    }
    for (String name : varied) {
      List<Definition> dependents = definitions.following(Set.of(name));
      if (dependents.stream().noneMatch(each -> each.name().equals(asked))) {
        throw new RefusedException(
            "\"%s\" is not made from \"%s\"; vary takes two variables of which one is made from the other"
                .formatted(asked, name));
      }
    }
    List<Definition> between =
        definitions.following(varied).stream()
            .filter(
                each ->
                    each.name().equals(asked)
                        || definitions.following(Set.of(each.name())).stream()
                            .anyMatch(later -> later.name().equals(asked)))
            .toList();
    for (Definition each : between) {
      if (!each.isVariable() || !LINE.matcher(each.source()).matches()) {
        throw new RefusedException(
            "%s is made by way of %s, which is Java that vary cannot run anew; make it a line: %s = …"
                .formatted(asked, each.name(), each.name()));
      }
    }
    return between;
  }
}
