package sheathwright.repl.line;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Figure;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.repl.line.Parser.Beyond;
import sheathwright.repl.line.Reader.Around;

/**
 * A call that is asked for parameter by parameter: what stands for each already, and what is typed
 * for it instead, read as in a call that is typed whole.
 */
public final class Questions {

  private static final Pattern NUMBER = Pattern.compile("-?[\\d.½¼¾⅛⅜⅝⅞][\\d\\s./½¼¾⅛⅜⅝⅞–-]*");

  private final Card card;
  private final ParameterNames names;
  private final CatalogCall call;
  private final Arguments arguments;
  private final List<String> typed = new ArrayList<>();

  /** Questions about a function, in a session. */
  public Questions(Card card, Around around) {
    Notes notes = new Notes();
    this.card = card;
    this.names = ParameterNames.of(card);
    this.arguments = new DirectRoad(around, notes).arguments();
    this.call = new CatalogCall(card, around, arguments, notes);
  }

  /** The function that is called. */
  public Card card() {
    return card;
  }

  /** The name of a parameter as it is typed. */
  public String name(Parameter parameter) {
    return names.shortest(parameter);
  }

  /** What stands for a parameter if nothing is typed for it; empty if something has to be. */
  public String standing(Parameter parameter) {
    return call.leftOut(parameter).map(left -> left + (left.isGiven() ? ", given" : "")).orElse("");
  }

  /**
   * Takes what is typed for a parameter; its unit may be left out.
   *
   * @throws Unreadable if it is none of its kind
   * @throws RefusedException if it is not one that is allowed
   */
  public void take(Parameter parameter, String value) {
    String unitless = value.strip();
    String whole =
        parameter.unit() != null && NUMBER.matcher(unitless).matches()
            ? Arguments.withUnit(unitless, parameter.unit()).strip()
            : unitless;
    Tree.Argument argument = argument(parameter, whole);
    check(parameter, argument);
    call.give(parameter, argument);
    typed.add(name(parameter) + " = " + whole);
  }

  private Tree.Argument argument(Parameter parameter, String value) {
    String line = "%s(%s = %s)".formatted(card.call(), parameter.column(), value);
    try {
      Tree tree = new Parser(line, Lexer.tokens(line)).statement();
      if (tree instanceof Tree.Call made && made.arguments().size() == 1) {
        return made.arguments().get(0);
      }
    } catch (Beyond unread) {
      throw noValue(parameter, value);
    }
    throw noValue(parameter, value);
  }

  private void check(Parameter parameter, Tree.Argument argument) {
    Piece piece;
    try {
      piece = arguments.forParameter(parameter, CatalogCall.label(parameter), argument);
    } catch (Beyond unknown) {
      throw noValue(parameter, argument.raw());
    }
    if (piece.value() instanceof Figure<?> figure && parameter.unit() != null) {
      figure
          .within(parameter.column(), parameter.unit(), parameter.limits())
          .refusal()
          .map(Refusal::reason)
          .ifPresent(
              reason -> {
                throw new RefusedException(reason);
              });
    }
  }

  private static Unreadable noValue(Parameter parameter, String value) {
    return new Unreadable(
        0,
        "%s is \"%s\"; it must be %s, or the name of a variable that holds it"
            .formatted(
                CatalogCall.label(parameter),
                value,
                (parameter.options() == null ? "" : "one of ") + Arguments.allowed(parameter)));
  }

  /** The call as it would be typed, with every name that was answered. */
  public String typed() {
    return card.call() + "(" + String.join(", ", typed) + ")";
  }
}
