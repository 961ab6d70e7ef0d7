package sheathwright.repl.line;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Spoken;
import sheathwright.figure.Amounts;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;

/** Every name that the library brings along: functions, kinds of things, their constants, words. */
final class Trade {

  private static final Map<String, Card> CARDS = new HashMap<>();
  private static final Map<String, Class<?>> TYPES = new HashMap<>();
  private static final Map<String, List<Field>> CONSTANTS = new HashMap<>();
  private static final Set<Class<? extends Enum<?>>> OPTIONS = new LinkedHashSet<>();

  static {
    for (Card card : Catalog.shipped().cards()) {
      CARDS.put(card.name(), card);
      CARDS.put(card.method().getName(), card);
      addType(card.method().getDeclaringClass());
      for (Argument argument : card.arguments()) {
        argument.things().forEach(Trade::add);
      }
      for (Parameter parameter : card.parameters()) {
        if (parameter.options() != null && OPTIONS.add(parameter.options())) {
          add(parameter.options());
        }
      }
    }
    List.of(Amounts.class, Figure.class, Choice.class, Condition.class, Check.class)
        .forEach(Trade::addType);
    SolvedWords.things().forEach(Trade::addType);
    add(Units.class);
  }

  private static final int LEAST_LETTERS = 1;

  private Trade() {}

  private static void addType(Class<?> type) {
    TYPES.put(type.getSimpleName(), type);
  }

  private static void add(Class<?> type) {
    if (TYPES.put(type.getSimpleName(), type) == null) {
      for (Field field : type.getFields()) {
        if (Modifier.isStatic(field.getModifiers())) {
          CONSTANTS.computeIfAbsent(field.getName(), name -> new ArrayList<>()).add(field);
        }
      }
    }
  }

  /** The library function that is called so, as tables write it or as Java does. */
  static Optional<Card> card(String name) {
    return Optional.ofNullable(CARDS.get(name));
  }

  static Optional<Class<?>> type(String name) {
    return Optional.ofNullable(TYPES.get(name));
  }

  /** The one constant of this name. */
  static Optional<Piece> constant(String name) {
    List<Field> fields = CONSTANTS.getOrDefault(name, List.of());
    return fields.size() == 1
        ? Optional.of(Piece.of(name, Amount.valueOf(fields.get(0))))
        : Optional.empty();
  }

  /** An option as Java says it: with its set where another set has a constant of the same name. */
  static Piece option(Enum<?> option) {
    boolean isAlone = CONSTANTS.getOrDefault(option.name(), List.of()).size() == 1;
    String set = isAlone ? "" : option.getDeclaringClass().getSimpleName() + ".";
    return Piece.of(set + option.name(), option);
  }

  /** The option that a word of the trade names by itself, in capitals or with digits in it. */
  static Optional<Piece> spoken(String word, int at) {
    boolean isSpoken =
        word.length() > LEAST_LETTERS && word.equals(word.toUpperCase(java.util.Locale.ROOT))
            || !word.isEmpty() && !Character.isLetter(word.charAt(0));
    List<Enum<?>> named = isSpoken ? named(word) : List.of();
    if (named.size() > 1) {
      throw new Unreadable(
          at,
          "%s could be %s: write which, or use it where one of them is due"
              .formatted(
                  word,
                  String.join(" or ", named.stream().map(each -> option(each).java()).toList())));
    }
    return named.stream().findFirst().map(Trade::option);
  }

  /** The options, each of another set, that a word names where no set is due. */
  private static List<Enum<?>> named(String word) {
    List<Enum<?>> named = new ArrayList<>();
    for (Class<? extends Enum<?>> options : OPTIONS) {
      for (Enum<?> option : options.getEnumConstants()) {
        if (Spoken.names(word, option)) {
          named.add(option);
        }
      }
    }
    return named;
  }
}
