package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Array;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.catalog.InShort;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.repl.line.Members.Facts;

/**
 * The arguments of a call, each put to the parameter of a Java method that it is for: by its name,
 * else by its place.
 *
 * @param called the method or constructor
 * @param pieces in its order
 */
record Fitting(Executable called, List<Piece> pieces) {

  /** What a bare number can only mean. */
  private static final Map<Type, Unit<?>> BARE =
      Map.of(
          Ratio.class,
          Units.RATIO,
          Pieces.class,
          Units.PIECE,
          Nails.class,
          Units.NAIL,
          Sheets.class,
          Units.SHEET);

  /** The arguments as a method takes them; nothing if it does not. */
  static Optional<Fitting> of(
      Executable called, List<Tree.Argument> said, Arguments arguments, Facts facts) {
    Parameter[] due = called.getParameters();
    int single = called.isVarArgs() ? due.length - 1 : due.length;
    if (said.size() > single && !called.isVarArgs()) {
      return Optional.empty();
    }
    Tree.Argument[] placed = new Tree.Argument[single];
    List<Tree.Argument> rest = new ArrayList<>();
    boolean wasNamed = false;
    int next = 0;
    for (Tree.Argument argument : said) {
      wasNamed |= argument.isNamed();
      int at = argument.isNamed() ? named(due, single, argument.name()) : wasNamed ? single : next;
      next++;
      if (at < 0 || at < single && placed[at] != null || at >= single && !called.isVarArgs()) {
        return Optional.empty();
      }
      if (at >= single) {
        rest.add(argument);
      } else {
        placed[at] = argument;
      }
    }
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < single; i++) {
      Type type = due[i].getParameterizedType();
      Optional<Piece> piece =
          placed[i] == null ? left(type, facts) : fitting(type, placed[i], arguments);
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      pieces.add(piece.get());
    }
    for (Tree.Argument argument : rest) {
      Optional<Piece> piece =
          fitting(due[single].getType().getComponentType(), argument, arguments);
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      pieces.add(piece.get());
    }
    return Optional.of(new Fitting(called, List.copyOf(pieces)));
  }

  private static int named(Parameter[] due, int single, String name) {
    for (int i = 0; i < single; i++) {
      if (isCalled(due[i].getName(), name)
          || inShort(raw(due[i].getParameterizedType()))
              .filter(maker -> isCalled(maker.getParameters()[0].getName(), name))
              .isPresent()) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isCalled(String parameter, String name) {
    return ParameterNames.folded(parameter).equals(ParameterNames.folded(name));
  }

  /** What stands for a parameter that was left out, if that was given once for all calls. */
  private static Optional<Piece> left(Type due, Facts facts) {
    return inShort(raw(due))
        .flatMap(
            maker ->
                facts
                    .called(maker.getParameters()[0].getName())
                    .flatMap(fact -> madeInShort(maker, fact)));
  }

  /** An argument as a method takes it; nothing if it does not. */
  private static Optional<Piece> fitting(Type due, Tree.Argument said, Arguments arguments) {
    Class<? extends Enum<?>> options = options(due);
    Optional<Piece> option = options == null ? Optional.empty() : Arguments.option(options, said);
    if (option.isPresent()) {
      return option;
    }
    Piece piece = arguments.expression(said);
    Class<?> wanted = raw(due);
    Object value = piece.value();
    if (wanted == double.class && value instanceof Number number) {
      return Optional.of(Piece.of(piece.java(), number.doubleValue()));
    }
    Unit<?> bare = value instanceof Number ? BARE.get(quantity(due)) : null;
    if (bare != null) {
      String amount = bare.isCount() ? bare.symbol() + "s" : "number";
      return Optional.of(
          Piece.of(
              "%s(%s)".formatted(amount, piece.java()),
              Figure.of(((Number) value).doubleValue(), bare)));
    }
    boolean fits =
        !piece.isKnown()
            || wanted.isInstance(value)
            || wanted == int.class && value instanceof Integer
            || wanted == boolean.class && value instanceof Boolean;
    return fits ? Optional.of(piece) : inShort(wanted).flatMap(maker -> madeInShort(maker, piece));
  }

  /** Of what a figure is that is due; nothing where none is. */
  private static Type quantity(Type due) {
    return due instanceof ParameterizedType kind && kind.getRawType() == Figure.class
        ? kind.getActualTypeArguments()[0]
        : Object.class;
  }

  /** The maker of a thing that is meant where its one argument stands in the thing's place. */
  private static Optional<Method> inShort(Class<?> thing) {
    return Arrays.stream(thing.getMethods())
        .filter(method -> method.isAnnotationPresent(InShort.class))
        .findFirst();
  }

  private static Optional<Piece> madeInShort(Method maker, Piece of) {
    if (!maker.getParameterTypes()[0].isInstance(of.value())) {
      return Optional.empty();
    }
    String java =
        "%s.%s(%s)"
            .formatted(maker.getDeclaringClass().getSimpleName(), maker.getName(), of.java());
    return Optional.of(Members.called(maker, null, java, new Object[] {of.value()}));
  }

  private static Class<?> raw(Type due) {
    return (Class<?>)
        (due instanceof ParameterizedType kind
            ? kind.getRawType()
            : due instanceof Class<?> ? due : Object.class);
  }

  @SuppressWarnings("unchecked") // where an argument is a OneOf, it is one of an enum
  private static Class<? extends Enum<?>> options(Type due) {
    Type word =
        due instanceof ParameterizedType kind && kind.getRawType() == OneOf.class
            ? kind.getActualTypeArguments()[0]
            : due;
    return word instanceof Class<?> type && type.isEnum() ? (Class<? extends Enum<?>>) type : null;
  }

  /** What each argument is, as the method is called with them by reflection. */
  Object[] values() {
    Object[] each = pieces.stream().map(Piece::value).toArray();
    if (!called.isVarArgs() || Arrays.asList(each).contains(null)) {
      return each;
    }
    int single = called.getParameterCount() - 1;
    Object rest =
        Array.newInstance(
            called.getParameterTypes()[single].getComponentType(), each.length - single);
    for (int i = single; i < each.length; i++) {
      Array.set(rest, i - single, each[i]);
    }
    Object[] values = Arrays.copyOf(each, single + 1);
    values[single] = rest;
    return values;
  }

  /** What a method's parameters are called. */
  static String names(Executable called) {
    return Arrays.stream(called.getParameters()).map(Parameter::getName).collect(joining(", "));
  }
}
