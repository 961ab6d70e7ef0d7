package sheathwright.repl.whatif;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Values;
import sheathwright.repl.show.TracedParts;
import sheathwright.repl.whatif.Sought.Tried;

/**
 * {@code seek order = 110 sheets by waste}: the one typed value that gives an answer, as it is
 * typed. The session stays as it is.
 */
public final class Seeking {

  private static final int WIDTH = 78;
  private static final String BELOW = "    ";

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
    return new Told(call, notches, target, typed).of(search.sought());
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
          "%s is no amount that %s could come to: %s"
              .formatted(call.target(), call.asked(), wrong.getMessage()));
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

  /**
   * What is asked for: a variable, or a part of the answer that one holds.
   *
   * @param part its name among the parts; empty if it is the only one
   * @param now what it comes to
   */
  private record Asked(String variable, String part, Figure<?> now) {

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

  /**
   * A search as it is told.
   *
   * @param typed how a value is given to what is sought
   */
  private record Told(SeekCall call, Notches notches, Figure<?> target, String typed) {

    String of(Sought sought) {
      if (sought instanceof Sought.Given given) {
        return given(given);
      }
      if (sought instanceof Sought.Jumped jumped) {
        return lines(
                "no %s makes %s %s; it steps over it"
                    .formatted(call.input(), call.asked(), target.shown()))
            + "\n"
            + tried(jumped.left())
            + "\n"
            + tried(jumped.right());
      }
      if (sought instanceof Sought.Nowhere nowhere) {
        return nowhere(nowhere);
      }
      Sought.Unanswered none = (Sought.Unanswered) sought;
      return lines(
          "%s has no value for any %s from %s to %s"
              .formatted(call.asked(), call.input(), typed(none.from()), typed(none.to())));
    }

    private String given(Sought.Given given) {
      String found = tried(given.found());
      if (!given.isStep()) {
        return found;
      }
      String range =
          given.least() == given.most()
              ? "no other " + call.input() + " gives it"
              : "the same from %s to %s".formatted(typed(given.least()), typed(given.most()));
      String neighbors =
          List.of(given.below(), given.above()).stream()
              .flatMap(Optional::stream)
              .map(each -> typed(each.value()) + " gives " + answer(each))
              .collect(joining(", "));
      return found + "\n" + lines("  " + range + "; " + neighbors);
    }

    private String nowhere(Sought.Nowhere nowhere) {
      if (answer(nowhere.least()).equals(answer(nowhere.most()))) {
        return lines(
            "%s stays %s for every %s from %s to %s"
                .formatted(
                    call.asked(),
                    answer(nowhere.least()),
                    call.input(),
                    typed(nowhere.from()),
                    typed(nowhere.to())));
      }
      return lines(
              "no %s from %s to %s makes %s %s; it reaches"
                  .formatted(
                      call.input(),
                      typed(nowhere.from()),
                      typed(nowhere.to()),
                      call.asked(),
                      target.shown()))
          + "\n"
          + tried(nowhere.least())
          + "\n"
          + tried(nowhere.most());
    }

    private String tried(Tried one) {
      return typed.formatted(call.input(), typed(one.value()))
          + "\n  %s would be %s".formatted(call.asked(), answer(one));
    }

    private static String answer(Tried one) {
      return one.answer().map(Figure::shown).orElse("without a value");
    }

    private String typed(double value) {
      return notches.typed(value);
    }

    private static String lines(String text) {
      return String.join("\n", Shown.wrapped(text, WIDTH, "", BELOW));
    }
  }
}
