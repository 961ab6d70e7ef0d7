package sheathwright.repl.line;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sheathwright.repl.line.Parser.Beyond;

/** Calls what Java declares: methods of an answer, makers of things, parts of a record. */
final class Members {

  private static final String OURS = "sheathwright";

  private Members() {}

  /** What was given once for all calls, under the name that a parameter has for it. */
  interface Facts {

    Facts NONE = name -> Optional.empty();

    Optional<Piece> called(String name);
  }

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
          && Modifier.isStatic(method.getModifiers()) == isStatic
          && method.getReturnType() != void.class) {
        Optional<Fitting> fitting = Fitting.of(method, said, arguments, Facts.NONE);
        if (fitting.isPresent()) {
          String java = listed(fitting.get(), of.operand() + "." + name);
          return called(method, isStatic ? null : of.value(), java, fitting.get().values());
        }
      }
    }
    checkNames(type, name, said);
    throw new Beyond();
  }

  /** A word of the prompt, or an amount. */
  static Optional<Piece> word(
      Class<?> words, String name, List<Tree.Argument> said, Arguments arguments) {
    for (Method method : words.getMethods()) {
      if (method.getName().equals(name)
          && Modifier.isStatic(method.getModifiers())
          && method.getReturnType() != void.class) {
        Optional<Fitting> fitting = Fitting.of(method, said, arguments, Facts.NONE);
        if (fitting.isPresent()) {
          return Optional.of(
              called(method, null, listed(fitting.get(), name), fitting.get().values()));
        }
      }
    }
    return Optional.empty();
  }

  /** A thing, made with its constructor. */
  static Piece made(Class<?> type, List<Tree.Argument> said, Arguments arguments) {
    for (Constructor<?> constructor : type.getConstructors()) {
      Optional<Fitting> fitting = Fitting.of(constructor, said, arguments, Facts.NONE);
      if (fitting.isPresent()) {
        return made(
            type, listed(fitting.get(), "new " + type.getSimpleName()), fitting.get().values());
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

  /**
   * How Java says a call that only the running program makes.
   *
   * @param facts what was given once, by the name that a parameter has for it
   * @return nothing if no argument fits, so that Java may say what is wrong
   * @throws Unreadable if arguments have names and none of the methods takes them
   */
  static Optional<String> written(
      Class<?> type, String name, List<Tree.Argument> said, Arguments arguments, Facts facts) {
    for (Method method : type.getMethods()) {
      if (method.getName().equals(name)) {
        Optional<Fitting> fitting = Fitting.of(method, said, arguments, facts);
        if (fitting.isPresent()) {
          return Optional.of(listed(fitting.get(), name));
        }
      }
    }
    checkNames(type, name, said);
    return Optional.empty();
  }

  /** Refuses arguments with names that no method of this name has; Java could only misread them. */
  private static void checkNames(Class<?> type, String name, List<Tree.Argument> said) {
    String takes =
        Arrays.stream(type.getMethods())
            .filter(method -> method.getName().equals(name))
            .map(Fitting::names)
            .distinct()
            .collect(joining("; or "));
    Optional<Tree.Argument> named = said.stream().filter(Tree.Argument::isNamed).findFirst();
    if (named.isPresent() && !takes.isEmpty()) {
      throw new Unreadable(named.get().at(), "%s takes %s".formatted(name, takes));
    }
  }

  private static String listed(Fitting fitting, String name) {
    return name + fitting.pieces().stream().map(Piece::java).collect(joining(", ", "(", ")"));
  }
}
