package sheathwright.repl.line;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import sheathwright.catalog.Numbers;
import sheathwright.figure.Amounts;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * A number said with its unit.
 *
 * @param number in the unit, as digits or as a fraction: {@code 16-9 1/4}
 * @param unit what it is in
 * @param per what it is for each one of, where no unit has that already; or null
 * @param java how Java says it
 * @param from where it begins in the line
 * @param to where it ends
 */
record Amount(String number, Unit<?> unit, Unit<?> per, String java, int from, int to) {

  private static final Map<Unit<?>, String> FUNCTIONS = functions();

  /** So many of a unit. */
  static Amount of(String number, Unit<?> unit, int from, int to) {
    return new Amount(number, unit, null, java(number, unit), from, to);
  }

  /** The same for each one of another unit. */
  Amount each(Unit<?> other, int end) {
    return new Amount(
        number, unit, other, "%s.dividedBy(%s)".formatted(java, java("1", other)), from, end);
  }

  /** The figure itself. */
  Figure<?> figure() {
    Figure<?> figure = Figure.of(Numbers.read(number, unit), unit);
    return per == null ? figure : figure.dividedBy(Figure.of(1, per));
  }

  /** The same number with a minus before it. */
  Amount negative(int sign) {
    Amount negative = of("-" + number, unit, sign, to);
    return per == null ? negative : negative.each(per, to);
  }

  /** The same number, taken as so many for each thing that a parameter counts by. */
  Amount in(Unit<?> other) {
    return of(number, other, from, to);
  }

  /** How Java says a number of a unit. */
  static String java(String number, Unit<?> unit) {
    String function = FUNCTIONS.get(unit);
    boolean isPlain = number.matches("[-+]?[\\d.]+(?:[eE][-+]?\\d+)?");
    if (isPlain || !unit.equals(Units.INCH) && !unit.equals(Units.FOOT)) {
      String digits = isPlain ? number : Shown.plain(Numbers.read(number, unit));
      return function == null
          ? "Figure.of(%s, Units.%s)".formatted(digits, field(unit))
          : "%s(%s)".formatted(function, digits);
    }
    return "%s(\"%s\")".formatted(function, number);
  }

  /** The call that makes a figure of whatever stands for its number. */
  static String called(String number, Unit<?> unit) {
    String function = FUNCTIONS.get(unit);
    return function == null ? number + " " + unit.symbol() : function + "(" + number + ")";
  }

  /** The name of a unit among all units; empty for one made up in a middle step. */
  static String field(Unit<?> unit) {
    return Arrays.stream(Units.class.getFields())
        .filter(field -> valueOf(field).equals(unit))
        .map(Field::getName)
        .findFirst()
        .orElse("");
  }

  static Object valueOf(Field constant) {
    try {
      return constant.get(null);
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Map<Unit<?>, String> functions() {
    Map<Unit<?>, String> functions = new LinkedHashMap<>();
    for (Method method : Amounts.class.getMethods()) {
      if (Arrays.equals(method.getParameterTypes(), new Class<?>[] {double.class})) {
        functions.merge(unitOf(method), method.getName(), Amount::first);
      }
    }
    return functions;
  }

  /** Minutes are given in hours, so that hours have two functions; the first by name says it. */
  private static String first(String left, String right) {
    return left.compareTo(right) < 0 ? left : right;
  }

  private static Unit<?> unitOf(Method amount) {
    try {
      return ((Figure<?>) amount.invoke(null, 1.0)).unit();
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
