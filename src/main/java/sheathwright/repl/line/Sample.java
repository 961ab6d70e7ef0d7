package sheathwright.repl.line;

import java.lang.reflect.InvocationTargetException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Shown;
import sheathwright.figure.Unit;
import sheathwright.repl.line.Parser.Beyond;
import sheathwright.repl.line.Reader.Around;

/** What a function's own example takes for each of its parameters, as it is typed. */
final class Sample {

  private final Map<Parameter, String> said = new HashMap<>();

  /** The sample of a function; of one whose example is not read here nothing is known. */
  Sample(Card card) {
    String line = card.text().examples().get(0).replaceAll(" // .*", "");
    try {
      Tree tree = new Parser(line, Lexer.tokens(line)).statement();
      while (tree instanceof Tree.Call call && call.of() != null) {
        tree = call.of();
      }
      if (tree instanceof Tree.Call call && Trade.card(call.name()).equals(Optional.of(card))) {
        Taken taken = new Taken(card, new DirectRoad(new Nothing(), new Notes()).arguments());
        taken.takeAll(call.arguments());
        taken.pieces().forEach((argument, piece) -> take(argument, piece.value()));
      }
    } catch (Unreadable | Beyond notRead) {
      said.clear();
    }
  }

  /** What can be typed for a parameter; empty if the example does not tell. */
  String of(Parameter parameter) {
    return said.getOrDefault(parameter, "");
  }

  private void take(Argument argument, Object value) {
    if (argument instanceof Argument.Thing thing && value != null) {
      var components = thing.type().getRecordComponents();
      for (int i = 0; i < components.length; i++) {
        try {
          take(thing.parts().get(i), components[i].getAccessor().invoke(value));
        } catch (IllegalAccessException | InvocationTargetException notOpen) {
          throw new IllegalStateException(notOpen);
        }
      }
    } else if (argument instanceof Argument.Plain plain) {
      typed(plain.parameter(), value).ifPresent(text -> said.put(plain.parameter(), text));
    }
  }

  private static Optional<String> typed(Parameter parameter, Object value) {
    if (value instanceof Figure<?> figure && figure.refusal().isEmpty()) {
      return Optional.of(typed(figure, parameter.unit()));
    }
    if (value instanceof OneOf<?> word && parameter.options() != null) {
      Choice<?> choice = word.choice();
      return choice.refusal().isEmpty() && choice.value() instanceof Enum<?> option
          ? Optional.of(parameter.spoken().get(option.ordinal()))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static String typed(Figure<?> figure, Unit<?> unit) {
    return Arguments.withUnit(Shown.plain(figure.in(unit).value()), unit).strip();
  }

  /** A session in which nothing has been said. */
  private static final class Nothing implements Around {

    @Override
    public boolean has(String name) {
      return false;
    }

    @Override
    public Object value(String name) {
      throw new IllegalStateException(name);
    }

    @Override
    public boolean isOwn(String name) {
      return false;
    }

    @Override
    public boolean isTyped(String name) {
      return false;
    }

    @Override
    public List<Class<?>> words() {
      return List.of();
    }
  }
}
