package sheathwright.repl.shell;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.GenericArrayType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.Arrays;

/**
 * What a line of a script made, with the type that the compiler found for it: each use is a class
 * of its own, which remembers the type.
 *
 * @param <T> the type
 */
public abstract class Kept<T> {

  private final T value;

  /** A value of the type that the compiler finds. */
  protected Kept(T value) {
    this.value = value;
  }

  public final T value() {
    return value;
  }

  /** The type as a line of Java writes it. */
  public final String type() {
    ParameterizedType own = (ParameterizedType) getClass().getGenericSuperclass();
    Type type = own.getActualTypeArguments()[0];
    return type instanceof Class<?> plain ? unboxed(plain) : written(type);
  }

  private static String unboxed(Class<?> type) {
    Class<?> primitive = java.lang.invoke.MethodType.methodType(type).unwrap().returnType();
    return written(primitive == void.class ? type : primitive);
  }

  private static String written(Type type) {
    if (type instanceof ParameterizedType generic) {
      return Arrays.stream(generic.getActualTypeArguments())
          .map(Kept::written)
          .collect(joining(", ", written(generic.getRawType()) + "<", ">"));
    }
    if (type instanceof WildcardType wild) {
      return wild.getLowerBounds().length > 0
          ? "? super " + written(wild.getLowerBounds()[0])
          : wild.getUpperBounds()[0] == Object.class
              ? "?"
              : "? extends " + written(wild.getUpperBounds()[0]);
    }
    if (type instanceof GenericArrayType array) {
      return written(array.getGenericComponentType()) + "[]";
    }
    Class<?> plain = (Class<?>) type;
    boolean isTyped = plain.getPackageName().equals("REPL"); // a class that a line declared
    return isTyped ? plain.getSimpleName() : plain.getCanonicalName();
  }
}
