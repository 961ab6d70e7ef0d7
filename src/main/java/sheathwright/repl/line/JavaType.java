package sheathwright.repl.line;

import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** The type under which Java knows a value that was made without it. */
final class JavaType {

  private JavaType() {}

  static String of(Piece piece) {
    Object value = piece.value();
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
    boolean isTold = piece.type() instanceof ParameterizedType;
    if (isTold && piece.type().getTypeName().matches("[\\w.$<>, ]+")) {
      return piece.type().getTypeName().replace('$', '.');
    }
    if (value instanceof Choice<?> choice) {
      boolean isWord = choice.refusal().isEmpty() && choice.value() instanceof Enum<?>;
      String word = isWord ? ((Enum<?>) choice.value()).getDeclaringClass().getCanonicalName() : "?";
      return Choice.class.getCanonicalName() + "<" + word + ">";
    }
    if (value instanceof Enum<?> option) {
      return option.getDeclaringClass().getCanonicalName();
    }
    Type declared = piece.type();
    return declared instanceof Class<?> plain && !plain.isPrimitive()
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
