package sheathwright.catalog;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;

/** A library function asked in a test as a table asks it: by column, in text. */
public final class Asked {

  private final Card card;
  private final Map<String, String> given;

  private Asked(Card card, Map<String, String> given) {
    this.card = card;
    this.given = given;
  }

  /** The function, with no arguments yet. */
  public static Asked of(String function) {
    return new Asked(Catalog.shipped().named(function), Map.of());
  }

  /**
   * A function with its arguments in one line: {@code toe_nail: length_in=3,
   * side_thickness_in=1.5}.
   */
  public static Asked line(String call) {
    String[] parts = call.split(":", 2);
    Asked asked = of(parts[0].strip());
    for (String each : parts[1].split(",")) {
      String[] argument = each.split("=", 2);
      asked = asked.with(argument[0].strip(), argument[1].strip());
    }
    return asked;
  }

  /** The same with one more argument, or another one in its place. */
  public Asked with(String column, String value) {
    if (card.parameter(column) == null) {
      throw new IllegalArgumentException(card.name() + " has no parameter " + column);
    }
    Map<String, String> more = new LinkedHashMap<>(given);
    more.put(column, value);
    return new Asked(card, more);
  }

  /** A result as a number. */
  public double number(String result) {
    return Double.parseDouble(answer(result));
  }

  /** A result as a table holds it. */
  public String answer(String result) {
    return result(result).plain();
  }

  /** Why this one result has no answer, or nothing if it has one. */
  public Optional<String> refusal(String result) {
    return result(result).refusal().map(Refusal::reason);
  }

  private Traced result(String result) {
    for (int i = 0; i < card.results().size(); i++) {
      if (card.results().get(i).column().equals(result)) {
        return results().get(i);
      }
    }
    throw new IllegalArgumentException(card.name() + " has no result " + result);
  }

  /** Why it has no answer, or nothing if it has one. */
  public Optional<String> refusal() {
    return results().stream()
        .flatMap(result -> result.refusal().stream())
        .map(Refusal::reason)
        .findFirst();
  }

  /** The same of a function that may refuse outright. */
  public Optional<String> refusedOutright() {
    try {
      return refusal();
    } catch (RefusedException outright) {
      return Optional.of(outright.getMessage());
    }
  }

  /** How its answers were found, line by line, as {@code explain} writes it. */
  public String working() {
    return Working.of(results());
  }

  /** Where the rule stands that a result was found by. */
  public String source(String result) {
    return result(result).source().toString();
  }

  /** The same where each word is named in passing, as at the prompt: {@code RING}. */
  public String workingInPassing() {
    return Working.of(
        card.answer(
            arguments().stream()
                .map(each -> each instanceof Choice<?> word ? Choice.literal(word.value()) : each)
                .toList()));
  }

  private List<Traced> results() {
    return card.answer(arguments());
  }

  private List<Traced> arguments() {
    return card.parameters().stream()
        .<Traced>map(each -> each.read(given.getOrDefault(each.column(), ""), Source.GIVEN))
        .toList();
  }
}
