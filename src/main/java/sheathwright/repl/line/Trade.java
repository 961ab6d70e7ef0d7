package sheathwright.repl.line;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
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

  /** All names together, gathered when the first is looked for: most lines only call a function. */
  private static final class Gathered {

    private static final Gathered ALL = new Gathered();

    private final Map<String, Class<?>> types = new HashMap<>();
    private final Map<String, List<Field>> constants = new HashMap<>();
    private final Set<Class<? extends Enum<?>>> options = new LinkedHashSet<>();

    private Gathered() {
      for (Card card : Catalog.shipped().cards()) {
        addType(card.method().getDeclaringClass());
        for (Argument argument : card.arguments()) {
          argument.things().forEach(this::add);
        }
        for (Parameter parameter : card.parameters()) {
          if (parameter.options() != null && options.add(parameter.options())) {
            add(parameter.options());
          }
        }
      }
      List.of(Amounts.class, Figure.class, Choice.class, Condition.class, Check.class)
          .forEach(this::addType);
      SolvedWords.things().forEach(this::addType);
      add(Units.class);
    }

    private void addType(Class<?> type) {
      types.put(type.getSimpleName(), type);
    }

    private void add(Class<?> type) {
      if (types.put(type.getSimpleName(), type) == null) {
        for (Field field : type.getFields()) {
          if (Modifier.isStatic(field.getModifiers())) {
            constants.computeIfAbsent(field.getName(), name -> new ArrayList<>()).add(field);
          }
        }
      }
    }
  }

  /** Words of so few letters may be anybody's variable: they are meant only in capitals. */
  private static final int FEW_LETTERS = 2;

  private Trade() {}

  /** The library function that is called so, as tables write it or as Java does. */
  static Optional<Card> card(String name) {
    return Catalog.shipped().called(name);
  }

  /**
   * The kind of thing that is called so; what every program knows is none, and is not looked for.
   */
  static Optional<Class<?>> type(String name) {
    return !Character.isUpperCase(name.charAt(0)) || isOfJava(name)
        ? Optional.empty()
        : Optional.ofNullable(Gathered.ALL.types.get(name));
  }

  private static boolean isOfJava(String name) {
    try {
      Class.forName("java.lang." + name, false, null);
      return true;
    } catch (ClassNotFoundException | LinkageError elsewhere) { // such as another case of letters
      return false;
    }
  }

  /** The one constant of this name. */
  static Optional<Piece> constant(String name) {
    List<Field> fields = Gathered.ALL.constants.getOrDefault(name, List.of());
    return fields.size() == 1
        ? Optional.of(Piece.of(name, Amount.valueOf(fields.get(0))))
        : Optional.empty();
  }

  /** An option as Java says it: with its set where another set has a constant of the same name. */
  static Piece option(Enum<?> option) {
    boolean isAlone = Gathered.ALL.constants.getOrDefault(option.name(), List.of()).size() == 1;
    String set = isAlone ? "" : option.getDeclaringClass().getSimpleName() + ".";
    return Piece.of(set + option.name(), option);
  }

  /**
   * The option that a word of the trade names by itself: in any case, but two letters only in
   * capitals.
   */
  static Optional<Piece> spoken(String word, int at) {
    boolean isSpoken =
        word.length() > FEW_LETTERS
            || word.length() == FEW_LETTERS && word.equals(word.toUpperCase(Locale.ROOT))
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
    for (Class<? extends Enum<?>> options : Gathered.ALL.options) {
      for (Enum<?> option : options.getEnumConstants()) {
        if (Spoken.names(word, option)) {
          named.add(option);
        }
      }
    }
    return named;
  }
}
