package sheathwright.repl.whatif;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Values;

/**
 * {@code seek order = 110 sheets by waste}: the one typed value that gives an answer, as it is
 * typed. The session stays as it is.
 */
public final class Seeking {

  private final Definitions definitions;
  private final Values values;
  private final Runs runs;
  private final Function<String, Object> value;

  /**
   * Seeks among what is defined.
   *
   * @param runs runs lines without keeping what they make
   * @param value what an expression stands for
   */
  public Seeking(
      Definitions definitions, Values values, Runs runs, Function<String, Object> value) {
    this.definitions = definitions;
    this.values = values;
    this.runs = runs;
    this.value = value;
  }

  /** What is said to a line that seeks; to the word alone, how it is used. */
  public String said(String about) {
    if (about.isEmpty()) {
      return SeekCall.USAGE;
    }
    SeekCall call = SeekCall.of(about);
    Asked asked = Asked.of(call.asked(), definitions, values);
    String input = variable(call.input());
    Unit<?> unit = inputUnit(input);
    checkMadeFrom(asked, input);
    Figure<?> target = target(call, asked.now());
    Object now = values.of(input).object();
    Bounds bounds = Bounds.of(asked.now(), now, unit);
    Notches notches = Notches.of(unit, bounds.areWhole() || now instanceof Integer);
    Search search =
        new Search(
            tried -> answers(input, notches, tried, asked, target.unit()),
            target,
            notches,
            bounds.limits(),
            now instanceof Number number ? number.doubleValue() : ((Figure<?>) now).value());
    String typed = input.equals(call.input()) ? "%s = %s" : "given(%s = %s)";
    return new Finding(call, notches, target, typed).of(search.sought());
  }

  /** The variable of a name; a fact that was given stands under one of its own. */
  private String variable(String said) {
    return definitions.variables().stream()
        .filter(each -> !definitions.has(said) && Reader.saidName(each).equals("given " + said))
        .findFirst()
        .orElse(said);
  }

  private Unit<?> inputUnit(String input) {
    Definition definition = definitions.of(input);
    if (definition == null || !definition.isVariable()) {
      throw new RefusedException(
          "there is no variable \"%s\" to find a value for; %s".formatted(input, typed()));
    }
    Optional<Unit<?>> unit = typedUnit(definition);
    return unit.orElseThrow(
        () ->
            new RefusedException(
                "%s is no number that was typed, and nothing else is sought; %s"
                    .formatted(input, typed())));
  }

  private String typed() {
    String typed =
        definitions.variables().stream()
            .filter(name -> typedUnit(definitions.of(name)).isPresent())
            .collect(joining(", "));
    return typed.isEmpty() ? "none was typed yet: waste = 10 %" : "typed were " + typed;
  }

  /** The unit of a number that was typed; nothing for what was worked out. */
  private Optional<Unit<?>> typedUnit(Definition definition) {
    Object held = values.of(definition.name()).object();
    boolean isMade = definition.reads().stream().anyMatch(definitions::has);
    if (isMade) {
      return Optional.empty();
    }
    if (held instanceof Integer || held instanceof Double) {
      return Optional.of(Units.RATIO);
    }
    return held instanceof Figure<?> figure && figure.refusal().isEmpty() && isTyped(figure)
        ? Optional.of(figure.unit())
        : Optional.empty();
  }

  /** Whether it is a number as it was typed, or arithmetic on such. */
  private static boolean isTyped(Traced number) {
    Step step = number.step();
    boolean isReckoned = step instanceof Step.Applied || step instanceof Step.Converted;
    return step.isGiven() || isReckoned && step.operands().stream().allMatch(Seeking::isTyped);
  }

  private void checkMadeFrom(Asked asked, String input) {
    boolean isMadeFrom =
        definitions.following(Set.of(input)).stream()
            .anyMatch(each -> each.name().equals(asked.variable()));
    if (!isMadeFrom) {
      String inputs =
          definitions.variables().stream()
              .filter(name -> typedUnit(definitions.of(name)).isPresent())
              .filter(
                  name ->
                      definitions.following(Set.of(name)).stream()
                          .anyMatch(each -> each.name().equals(asked.variable())))
              .collect(joining(", "));
      throw new RefusedException(
          "%s does not depend on %s; %s"
              .formatted(
                  asked.variable(),
                  input,
                  inputs.isEmpty() ? "it depends on nothing typed" : "it depends on " + inputs));
    }
  }

  /** What is to come of it; a plain number is one of the answer's own unit. */
  private Figure<?> target(SeekCall call, Figure<?> now) {
    Object said;
    try {
      said = value.apply(call.target());
    } catch (Unreadable | RefusedException wrong) {
      throw new RefusedException(
          "%s is no amount that %s could come to; it comes to %s now"
              .formatted(call.target(), call.asked(), now.shown()));
    }
    if (said instanceof Number number) {
      return Figure.of(number.doubleValue(), now.unit());
    }
    if (said instanceof Figure<?> figure
        && figure.unit().dimension().equals(now.unit().dimension())) {
      return Figure.of(figure.in(now.unit()).value(), now.unit());
    }
    throw new RefusedException(
        "%s comes to %s, and can never be %s; say what it is to be in its own unit"
            .formatted(call.asked(), now.shown(), call.target()));
  }

  /** What comes of each value; nothing for one that is refused. */
  private List<Optional<Figure<?>>> answers(
      String input, Notches notches, List<Double> tried, Asked asked, Unit<?> unit) {
    try {
      List<Map<String, String>> changes =
          tried.stream().map(each -> Map.of(input, notches.typed(each))).toList();
      return runs.of(changes, Set.of(asked.variable())).stream()
          .map(made -> asked.in(made.get(asked.variable())))
          .map(found -> found.filter(each -> each.refusal().isEmpty()))
          .map(found -> found.<Figure<?>>map(each -> each.in(unit)))
          .toList();
    } catch (RefusedException refused) {
      if (tried.size() == 1) {
        return List.of(Optional.empty());
      }
      List<Optional<Figure<?>>> all = new ArrayList<>();
      int half = tried.size() / 2;
      all.addAll(answers(input, notches, tried.subList(0, half), asked, unit));
      all.addAll(answers(input, notches, tried.subList(half, tried.size()), asked, unit));
      return all;
    }
  }
}
