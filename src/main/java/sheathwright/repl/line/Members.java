package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.OneOf;
import sheathwright.repl.line.Parser.Beyond;

/** Calls what Java declares: methods of an answer, makers of things, parts of a record. */
final class Members {

  private static final String OURS = "sheathwright";

  private Members() {}

  /** A part of an answer, or a constant of a type. */
  static Piece part(Piece of, String name) {
    if (of.value() instanceof Class<?> type) {
      return Arrays.stream(type.getFields())
          .filter(field -> field.getName().equals(name) && Modifier.isStatic(field.getModifiers()))
          .findFirst()
          .map((Field field) -> Piece.of(of.java() + "." + name, Amount.valueOf(field)))
          .orElseThrow(Beyond::new);
    }
    return call(of, name, List.of(), new Arguments(none -> null));
  }

  /**
   * A call on an answer or on a type.
   *
   * @throws Beyond if nothing fits, so that Java may say what is wrong
   */
  static Piece call(Piece of, String name, List<Tree.Argument> said, Arguments arguments) {
    boolean isStatic = of.value() instanceof Class<?>;
    Class<?> type = isStatic ? (Class<?>) of.value() : of.value().getClass();
    if (!type.getPackageName().startsWith(OURS)) {
      throw new Beyond(); // what it does to others is Java's to do, once
    }
    for (Method method : type.getMethods()) {
      if (method.getName().equals(name)
          && method.getParameterCount() == said.size()
          && Modifier.isStatic(method.getModifiers()) == isStatic
          && method.getReturnType() != void.class) {
        Optional<List<Piece>> pieces = fitting(method, said, arguments);
        if (pieces.isPresent()) {
          String java = listed(pieces.get(), of.operand() + "." + name);
          return called(method, isStatic ? null : of.value(), java, values(pieces.get()));
        }
      }
    }
    throw new Beyond();
  }

  /** A word of the prompt, or an amount. */
  static Optional<Piece> word(
      Class<?> words, String name, List<Tree.Argument> said, Arguments arguments) {
    for (Method method : words.getMethods()) {
      if (method.getName().equals(name)
          && method.getParameterCount() == said.size()
          && Modifier.isStatic(method.getModifiers())
          && method.getReturnType() != void.class) {
        Optional<List<Piece>> pieces = fitting(method, said, arguments);
        if (pieces.isPresent()) {
          return Optional.of(
              called(method, null, listed(pieces.get(), name), values(pieces.get())));
        }
      }
    }
    return Optional.empty();
  }

  /** A thing, made with its constructor. */
  static Piece made(Class<?> type, List<Tree.Argument> said, Arguments arguments) {
    for (Constructor<?> constructor : type.getConstructors()) {
      if (constructor.getParameterCount() == said.size()) {
        Optional<List<Piece>> pieces = fitting(constructor, said, arguments);
        if (pieces.isPresent()) {
          return made(
              type, listed(pieces.get(), "new " + type.getSimpleName()), values(pieces.get()));
        }
      }
    }
    throw new Beyond();
  }

  /** A thing of these parts; unknown as long as one of them is. */
  static Piece made(Class<?> type, String java, Object[] values) {
    if (Arrays.asList(values).contains(null)) {
      return Piece.unknown(java);
    }
    try {
      return Piece.of(java, type.getConstructors()[0].newInstance(values));
    } catch (InvocationTargetException thrown) {
      throw raised(thrown);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** What a method answers; unknown as long as one of its arguments is. */
  static Piece called(Method method, Object target, String java, Object[] values) {
    if (Arrays.asList(values).contains(null)) {
      return Piece.unknown(java);
    }
    try {
      Object answer = method.invoke(target, values);
      return new Piece(java, answer, method.getGenericReturnType(), false);
    } catch (InvocationTargetException thrown) {
      throw raised(thrown);
    } catch (IllegalAccessException hidden) {
      throw new Beyond();
    }
  }

  private static RuntimeException raised(InvocationTargetException thrown) {
    return thrown.getCause() instanceof RuntimeException cause
        ? cause
        : new IllegalStateException(thrown.getCause().getMessage(), thrown.getCause());
  }

  private static Optional<List<Piece>> fitting(
      Executable called, List<Tree.Argument> said, Arguments arguments) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < said.size(); i++) {
      Optional<Piece> piece = fitting(called.getGenericParameterTypes()[i], said.get(i), arguments);
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      pieces.add(piece.get());
    }
    return Optional.of(pieces);
  }

  /** An argument as a method takes it; nothing if it does not. */
  private static Optional<Piece> fitting(Type due, Tree.Argument said, Arguments arguments) {
    if (said.isNamed()) {
      return Optional.empty();
    }
    Class<? extends Enum<?>> options = options(due);
    Optional<Piece> option = options == null ? Optional.empty() : Arguments.option(options, said);
    if (option.isPresent()) {
      return option;
    }
    Piece piece = arguments.expression(said);
    Class<?> wanted =
        (Class<?>)
            (due instanceof ParameterizedType kind
                ? kind.getRawType()
                : due instanceof Class<?> ? due : Object.class);
    Object value = piece.value();
    if (wanted == double.class && value instanceof Number number) {
      return Optional.of(Piece.of(piece.java(), number.doubleValue()));
    }
    boolean fits =
        wanted.isInstance(value)
            || wanted == int.class && value instanceof Integer
            || wanted == boolean.class && value instanceof Boolean;
    return fits ? Optional.of(piece) : Optional.empty();
  }

  @SuppressWarnings("unchecked") // where an argument is a OneOf, it is one of an enum
  private static Class<? extends Enum<?>> options(Type due) {
    Type word =
        due instanceof ParameterizedType kind && kind.getRawType() == OneOf.class
            ? kind.getActualTypeArguments()[0]
            : due;
    return word instanceof Class<?> type && type.isEnum() ? (Class<? extends Enum<?>>) type : null;
  }

  private static String listed(List<Piece> pieces, String name) {
    return name + pieces.stream().map(Piece::java).collect(joining(", ", "(", ")"));
  }

  private static Object[] values(List<Piece> pieces) {
    return pieces.stream().map(Piece::value).toArray();
  }
}
