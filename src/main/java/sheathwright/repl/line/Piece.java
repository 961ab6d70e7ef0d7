package sheathwright.repl.line;

import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * A part of a line: how Java says it, and what it is.
 *
 * @param java as Java says it
 * @param value what it is; null where only the running program can know
 * @param type as a method declares it; null where the value tells
 * @param isLoose whether it needs brackets before a dot
 */
record Piece(String java, Object value, Type type, boolean isLoose) {

  static Piece of(String java, Object value) {
    return new Piece(java, value, null, false);
  }

  /** One whose value only the running program will know. */
  static Piece unknown(String java) {
    return of(java, null);
  }

  static Piece loose(String java, Object value) {
    return new Piece(java, value, null, true);
  }

  boolean isKnown() {
    return value != null;
  }

  /** As it stands before a dot or beside an operator. */
  String operand() {
    return isLoose ? "(" + java + ")" : java;
  }

  /** The type under which Java knows what was made without it. */
  String javaType() {
    if (value instanceof Integer) {
      return "int";
    }
    if (value instanceof Double) {
      return "double";
    }
    if (value instanceof Boolean) {
      return "boolean";
    }
    if (value instanceof Figure<?> figure) {
      return Figure.class.getCanonicalName() + "<" + quantity(figure.unit()) + ">";
    }
    boolean isTold = type instanceof ParameterizedType;
    if (isTold && type.getTypeName().matches("[\\w.$<>, ]+")) {
      return type.getTypeName().replace('$', '.');
    }
    if (value instanceof Choice<?> choice) {
      boolean isWord = choice.refusal().isEmpty() && choice.value() instanceof Enum<?>;
      String word =
          isWord ? ((Enum<?>) choice.value()).getDeclaringClass().getCanonicalName() : "?";
      return Choice.class.getCanonicalName() + "<" + word + ">";
    }
    if (value instanceof Enum<?> option) {
      return option.getDeclaringClass().getCanonicalName();
    }
    return type instanceof Class<?> plain && !plain.isPrimitive()
        ? plain.getCanonicalName()
        : value.getClass().getCanonicalName();
  }

  private static String quantity(Unit<?> unit) {
    return Arrays.stream(Units.class.getFields())
        .filter(field -> Amount.valueOf(field).equals(unit))
        .map(Field::getGenericType)
        .map(type -> ((ParameterizedType) type).getActualTypeArguments()[0])
        .map(type -> type.getTypeName().replace('$', '.'))
        .findFirst()
        .orElse("?");
  }
}
