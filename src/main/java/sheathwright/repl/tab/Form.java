package sheathwright.repl.tab;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Figure;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/**
 * A function asked for by its name alone: one line a parameter with unit, range, choices and what
 * stands there already. Enter keeps, a value changes, nothing where something is due leaves. It
 * ends as the call with every name that was answered.
 */
public final class Form {

  private final Card card;
  private final Map<String, String> given;

  /**
   * The form of a function.
   *
   * @param given what is stated already, as it would be typed, by column
   */
  public Form(Card card, Map<String, String> given) {
    this.card = card;
    this.given = Map.copyOf(given);
  }

  /**
   * Asks for each parameter in turn.
   *
   * @param line what is typed behind a question; nothing at the end of all input
   * @param said hears what is wrong with an answer, before it is asked for again
   * @return the call as it would be typed; nothing if the form was left
   */
  public Optional<String> filled(Function<String, Optional<String>> line, Consumer<String> said) {
    List<String> named = new ArrayList<>();
    said.accept(card.text().summary() + "\nEnter keeps what stands in brackets.");
    for (Parameter parameter : card.parameters()) {
      String kept = given.getOrDefault(parameter.column(), parameter.preset());
      Optional<String> answer = answer(parameter, kept, line, said);
      if (answer.isEmpty()) {
        return Optional.empty();
      }
      boolean isPreset = answer.get().equals(parameter.preset());
      if (!isPreset) {
        named.add(parameter.column() + " = " + withUnit(parameter, answer.get()));
      }
    }
    return Optional.of(card.call() + "(" + String.join(", ", named) + ")");
  }

  private static Optional<String> answer(
      Parameter parameter,
      String kept,
      Function<String, Optional<String>> line,
      Consumer<String> said) {
    while (true) {
      Optional<String> typed = line.apply(question(parameter, kept)).map(String::strip);
      String value = typed.filter(text -> !text.isEmpty()).orElse(kept);
      if (typed.isEmpty() || value.isEmpty()) {
        return Optional.empty();
      }
      Optional<String> wrong = refusal(parameter, value);
      if (wrong.isEmpty()) {
        return Optional.of(value);
      }
      said.accept(wrong.get());
    }
  }

  /** One line: the column, what it is with its range, the choices, and what stands there. */
  static String question(Parameter parameter, String kept) {
    String choices =
        parameter.options() == null ? "" : " (" + String.join(", ", parameter.spoken()) + ")";
    return parameter.column()
        + ": "
        + parameter.text()
        + choices
        + (kept.isEmpty() ? "" : " [" + kept + "]")
        + ": ";
  }

  private static Optional<String> refusal(Parameter parameter, String value) {
    try {
      Traced read = parameter.read(bare(parameter, value), Source.GIVEN);
      Traced held =
          read instanceof Figure<?> figure
              ? figure.within(parameter.column(), parameter.unit(), parameter.limits())
              : read;
      return held.refusal().map(Refusal::reason);
    } catch (RefusedException unreadable) {
      return Optional.of(unreadable.getMessage());
    }
  }

  /** A value without the unit of its column, where that was typed behind it. */
  private static String bare(Parameter parameter, String value) {
    String unit = parameter.unit() == null ? "" : parameter.unit().symbol();
    return !unit.isEmpty() && value.endsWith(unit)
        ? value.substring(0, value.length() - unit.length()).strip()
        : value;
  }

  /** A value as it is typed in a call. */
  private static String withUnit(Parameter parameter, String value) {
    String unit = parameter.unit() == null ? "" : parameter.unit().symbol();
    String number = bare(parameter, value);
    return unit.isEmpty()
        ? number
        : unit.startsWith("$") ? "$" + number + unit.substring(1) : number + " " + unit;
  }
}
