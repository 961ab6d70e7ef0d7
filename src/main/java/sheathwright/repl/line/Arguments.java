package sheathwright.repl.line;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sheathwright.catalog.Numbers;
import sheathwright.catalog.Parameter;
import sheathwright.catalog.Spoken;
import sheathwright.figure.Choice;
import sheathwright.figure.Dimension;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Shown;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.repl.line.Parser.Beyond;

/** What stands between two commas, taken as what is due there: a word, a number with its unit. */
final class Arguments {

  private final Function<Tree.Argument, Piece> expressions;
  private final Map<Tree.Argument, Piece> known = new IdentityHashMap<>();

  /** Arguments whose expressions are read so; the same one is read once. */
  Arguments(Function<Tree.Argument, Piece> expressions) {
    this.expressions = expressions;
  }

  /** An argument as an expression. */
  Piece expression(Tree.Argument argument) {
    Piece piece = known.get(argument);
    if (piece == null) {
      piece = expressions.apply(argument);
      known.put(argument, piece);
    }
    return piece;
  }

  /** The same; null where it is none. */
  Piece tried(Tree.Argument argument) {
    try {
      return expression(argument);
    } catch (Unreadable | Beyond noExpression) {
      return null;
    }
  }

  /** An argument as a value of a parameter. */
  Piece forParameter(Parameter parameter, String label, Tree.Argument argument) {
    return parameter.options() == null
        ? number(parameter, label, argument)
        : word(parameter.options(), label, argument);
  }

  /** What a parameter takes where it is left out. */
  static Piece preset(Parameter parameter, String text) {
    if (parameter.options() != null) {
      return Trade.option(Spoken.option(text, parameter.options()).orElseThrow());
    }
    if (parameter.isLeftOpen(text)) {
      return Piece.of("null", Figure.none(text, parameter.unit()));
    }
    String number = text.contains("/") ? text : Shown.plain(Numbers.read(text, parameter.unit()));
    Amount amount = Amount.of(number, parameter.unit(), 0, 0);
    return Piece.of(amount.java(), amount.figure());
  }

  /** What may stand for a parameter, in words that can be typed. */
  static String allowed(Parameter parameter) {
    return parameter.options() == null
        ? numberOf(parameter.unit())
        : String.join(", ", Spoken.words(parameter.options()));
  }

  private Piece word(Class<? extends Enum<?>> options, String label, Tree.Argument argument) {
    Optional<Piece> said = option(options, argument);
    if (said.isPresent()) {
      return said.get();
    }
    Piece piece;
    try {
      piece = expression(argument);
    } catch (Beyond unknown) {
      if (argument.tokens().stream().anyMatch(token -> token.is("("))) {
        throw unknown;
      }
      boolean isName =
          argument.tokens().size() == 1 && argument.tokens().get(0).kind() == Token.Kind.WORD;
      throw wrongWord(options, label, argument, isName ? ", which is not defined" : "");
    }
    if (piece.isKnown() && !isOneOf(piece.value(), options)) {
      throw wrongWord(options, label, argument, "");
    }
    return piece;
  }

  /** The option that an argument says, in quotes or without. */
  static Optional<Piece> option(Class<? extends Enum<?>> options, Tree.Argument argument) {
    String raw = argument.raw().strip();
    boolean isQuoted =
        argument.tokens().size() == 1 && argument.tokens().get(0).kind() == Token.Kind.TEXT;
    return Spoken.option(isQuoted ? raw.substring(1, raw.length() - 1) : raw, options)
        .map(Trade::option);
  }

  private static boolean isOneOf(Object value, Class<? extends Enum<?>> options) {
    return options.isInstance(value)
        || value instanceof Choice<?> choice
            && (choice.refusal().isPresent() || options.isInstance(choice.value()))
        || value instanceof OneOf<?> && !(value instanceof Enum<?>);
  }

  private static Unreadable wrongWord(
      Class<? extends Enum<?>> options, String label, Tree.Argument argument, String about) {
    return new Unreadable(
        argument.at(),
        "%s is \"%s\"%s; it must be one of %s"
            .formatted(label, argument.raw(), about, String.join(", ", Spoken.words(options))));
  }

  private Piece number(Parameter parameter, String label, Tree.Argument argument) {
    Unit<?> unit = parameter.unit();
    Optional<Amount> amount = amount(argument);
    if (amount.isPresent() && unit.symbol().startsWith(per(amount.get().unit()))) {
      Amount each = amount.get().in(unit);
      return Piece.of(each.java(), each.figure());
    }
    Piece piece = expression(argument);
    if (piece.value() instanceof Number number && countsOnly(unit)) {
      Amount counted = Amount.of(String.valueOf(number), unit, 0, 0);
      return Piece.of(counted.java(), counted.figure());
    }
    if (piece.value() instanceof Number number) {
      if (!unit.equals(Units.RATIO)) {
        throw new Unreadable(
            argument.at(),
            "%s is %s without a unit; write %s"
                .formatted(label, argument.raw(), withUnit(argument.raw(), unit)));
      }
      return Piece.of("number(" + piece.java() + ")", Figure.of(number.doubleValue(), Units.RATIO));
    }
    boolean isWrong =
        piece.isKnown()
            && !(piece.value() instanceof Figure<?> figure
                && figure.unit().dimension().equals(unit.dimension()));
    if (isWrong) {
      throw new Unreadable(
          argument.at(),
          "%s is %s; it must be %s".formatted(label, told(argument, piece), numberOf(unit)));
    }
    return piece;
  }

  /** Whether a unit only counts, so that a bare number can mean nothing else. */
  private static boolean countsOnly(Unit<?> unit) {
    return unit.isCount() || unit.equals(Units.NAILS_PER_SHEET);
  }

  /** What was given; a name with what it holds. */
  private static String told(Tree.Argument argument, Piece piece) {
    boolean isName = argument.tokens().size() == 1 && piece.value() instanceof Figure<?>;
    return argument.raw() + (isName ? ", " + piece.value() : "");
  }

  /** The argument, if it is nothing but a number with its unit. */
  static Optional<Amount> amount(Tree.Argument argument) {
    Tree tree;
    try {
      tree = argument.tree();
    } catch (Beyond noTree) {
      return Optional.empty();
    }
    return tree instanceof Tree.Quantity quantity
        ? Optional.of(quantity.amount())
        : Optional.empty();
  }

  private static String per(Unit<?> unit) {
    return unit.symbol() + (unit.isCount() ? "s/" : "/");
  }

  private static String numberOf(Unit<?> unit) {
    return unit.symbol().isEmpty()
        ? "a number"
        : unit.equals(Units.RISE_IN_12) ? "a pitch, 6 in 12" : "a number of " + unit.spoken();
  }

  /** A number with the unit that it lacks, as it is said. */
  static String withUnit(String number, Unit<?> unit) {
    if (unit.symbol().startsWith("$")) {
      return "$" + number + unit.symbol().substring(1);
    }
    String rise = number.strip();
    if (unit.dimension().power(Dimension.Base.STRENGTH) != 0) { // no word behind a number says it
      return Amount.called(rise, unit);
    }
    if (unit.equals(Units.RISE_IN_12) && rise.endsWith("/12")) {
      return rise.substring(0, rise.length() - "/12".length()).strip() + " in 12";
    }
    return number + " " + unit.symbol() + (unit.isCount() ? "s" : "");
  }
}
