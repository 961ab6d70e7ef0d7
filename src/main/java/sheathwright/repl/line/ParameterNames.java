package sheathwright.repl.line;

import java.lang.reflect.Method;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Nearest;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Units;

/**
 * What each parameter of a function may be called: its column, the column less its unit, or the
 * first or the last words of it where no other column of the function has them.
 */
public final class ParameterNames {

  private static final Pattern WORD_BEHIND = Pattern.compile("_([a-z0-9])");
  private static final Map<Method, ParameterNames> READ =
      new java.util.concurrent.ConcurrentHashMap<>();

  private final Card card;
  private final Map<String, Parameter> parameters = new LinkedHashMap<>();
  private final Map<String, Parameter> written = new LinkedHashMap<>();
  private final Map<String, Argument.Thing> things = new LinkedHashMap<>();
  private final Map<String, Which> kinds = new LinkedHashMap<>();

  /** A number, and the word that its name says beside. */
  record Which(Parameter number, Parameter kind, Enum<?> word) {}

  private ParameterNames(Card card) {
    this.card = card;
    List<Parameter> all = card.parameters();
    all.forEach(parameter -> name(parameter.column(), parameter));
    all.stream()
        .filter(parameter -> isAlone(withoutUnit(parameter)))
        .forEach(parameter -> name(withoutUnit(parameter), parameter));
    all.forEach(this::nameByFact);
    all.forEach(this::nameByBeginning);
    all.forEach(this::nameByEnd);
    all.stream().filter(this::isTheOnlyPitch).forEach(pitch -> name("pitch", pitch));
    card.arguments().forEach(this::addThing);
    for (Parameter kind : all) {
      if (!kind.saysWhich().isEmpty()) {
        Parameter number = card.parameter(kind.saysWhich());
        for (Enum<?> word : kind.options().getEnumConstants()) {
          kinds.put(folded(word.name()), new Which(number, kind, word));
        }
      }
    }
  }

  /** The names in one function. */
  public static ParameterNames of(Card card) {
    return READ.computeIfAbsent(card.method(), unread -> new ParameterNames(card));
  }

  /** The parameter that is called so, if one is and no other. */
  public Optional<Parameter> parameter(String name) {
    return Optional.ofNullable(parameters.get(folded(name)));
  }

  /** A thing that is handed over whole, by the name that the function has for it. */
  Optional<Argument.Thing> thing(String name) {
    return Optional.ofNullable(things.get(folded(name)));
  }

  Optional<Which> which(String name) {
    return Optional.ofNullable(kinds.get(folded(name)));
  }

  /** That there is no such name, and which there are. */
  Unreadable unknown(String name, int at) {
    List<String> known = known();
    return new Unreadable(
        at,
        "%s has no \"%s\"%s; it takes %s"
            .formatted(
                card.method().getName(),
                name,
                Nearest.asked(name, known),
                String.join(", ", known)));
  }

  /** The shortest name of each parameter, in order. */
  List<String> known() {
    return card.parameters().stream().map(this::shortest).toList();
  }

  /** The name of a parameter that is quickest to type and still whole words. */
  public String shortest(Parameter parameter) {
    Optional<Fact> fact = Fact.of(card, parameter);
    return fact.map(Fact::word)
        .filter(word -> parameter(word).filter(parameter::equals).isPresent())
        .or(() -> Optional.of(withoutUnit(parameter)).filter(this::isAlone))
        .orElse(parameter.column());
  }

  /**
   * The shortest name of a parameter that begins so, with its words joined as they are typed there;
   * nothing if none does.
   */
  public Optional<String> beginning(String typed, Parameter parameter) {
    return written.entrySet().stream()
        .filter(name -> name.getValue().equals(parameter))
        .flatMap(name -> Stream.of(name.getKey(), camel(name.getKey())))
        .filter(name -> name.startsWith(typed))
        .min(Comparator.comparing(name -> folded(name).length()));
  }

  private static String camel(String name) {
    return WORD_BEHIND.matcher(name).replaceAll(word -> word.group(1).toUpperCase(Locale.ROOT));
  }

  private boolean isAlone(String withoutUnit) {
    return card.parameters().stream().filter(p -> withoutUnit(p).equals(withoutUnit)).count() == 1;
  }

  private void name(String name, Parameter parameter) {
    if (parameters.putIfAbsent(folded(name), parameter) == null) {
      written.put(name, parameter);
    }
  }

  private void nameByFact(Parameter parameter) {
    Fact.of(card, parameter)
        .ifPresent(
            fact -> {
              if (!beginsAnother(fact.word(), parameter)) {
                name(fact.word(), parameter);
              }
              fact.columns().forEach(column -> name(column, parameter));
              if (fact == Fact.SPACING && !beginsAnother("support", parameter)) {
                name("support", parameter);
              }
            });
  }

  private void nameByBeginning(Parameter parameter) {
    List<String> words = List.of(withoutUnit(parameter).split("_"));
    for (int i = words.size() - 1; i > 0; i--) {
      String beginning = String.join("_", words.subList(0, i));
      if (!beginsAnother(beginning, parameter)) {
        name(beginning, parameter);
      }
    }
  }

  private void nameByEnd(Parameter parameter) {
    List<String> words = List.of(withoutUnit(parameter).split("_"));
    for (int i = 1; i < words.size(); i++) {
      String end = String.join("_", words.subList(i, words.size()));
      if (!beginsAnother(end, parameter) && !endsAnother(end, parameter)) {
        name(end, parameter);
      }
    }
  }

  private boolean endsAnother(String end, Parameter parameter) {
    return card.parameters().stream()
        .filter(other -> other != parameter)
        .anyMatch(other -> ("_" + withoutUnit(other)).endsWith("_" + end));
  }

  private boolean beginsAnother(String beginning, Parameter parameter) {
    return card.parameters().stream()
        .filter(other -> other != parameter)
        .anyMatch(other -> (other.column() + "_").startsWith(beginning + "_"));
  }

  private boolean isTheOnlyPitch(Parameter parameter) {
    return Units.RISE_IN_12.equals(parameter.unit())
        && card.parameters().stream().filter(p -> Units.RISE_IN_12.equals(p.unit())).count() == 1;
  }

  private void addThing(Argument argument) {
    if (argument instanceof Argument.Thing thing) {
      things.putIfAbsent(folded(thing.javaName()), thing);
      thing.parts().forEach(this::addThing);
    }
  }

  private static String withoutUnit(Parameter parameter) {
    String column = parameter.column();
    String suffix =
        parameter.unit() == null || parameter.unit().suffix().isEmpty()
            ? ""
            : "_" + parameter.unit().suffix();
    return !suffix.isEmpty() && column.endsWith(suffix)
        ? column.substring(0, column.length() - suffix.length())
        : column;
  }

  static String folded(String name) {
    return name.toLowerCase(Locale.ROOT).replace("_", "");
  }
}
