package sheathwright.figure;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.regex.Pattern;

/**
 * What can be done to numbers. Each operator is one entry: its value, how it reads in print, and
 * how it reads in a cell, so that none of the three can change without the others in view. In the
 * two patterns {@code {0}} is an operand bracketed if it binds less tightly than the operator,
 * {@code {0+}} also if as tightly, {@code {0-}} never.
 *
 * <p>The unit of the answer follows in {@link Figure}, which brings operands of a sum, a minimum or
 * a maximum to one unit before it comes here.
 */
public enum Operator {
  SAME((a, b) -> a, Written.WHOLE, "{0}", "{0}"),
  PLUS((a, b) -> a + b, Written.SUM, "{0} + {1}", "{0}+{1}"),
  MINUS((a, b) -> a - b, Written.SUM, "{0} − {1+}", "{0}-{1+}"),
  TIMES((a, b) -> a * b, Written.PRODUCT, "{0} × {1}", "{0}*{1}"),
  DIVIDED_BY((a, b) -> a / b, Written.PRODUCT, "{0} ÷ {1+}", "{0}/{1+}"),
  POWER(Math::pow, Written.POWER, "{0+}^{1+}", "({0-})^({1-})"),
  SQUARE_ROOT((a, b) -> Math.sqrt(a), Written.WHOLE, "√({0-})", "SQRT({0-})"),
  ROOT((a, b) -> Math.pow(a, 1 / b), Written.POWER, "({0-})^(1/{1+})", "({0-})^(1/{1+})"),
  LOGARITHM((a, b) -> Math.log10(a), Written.WHOLE, "log({0-})", "LOG10({0-})"),
  ARCTANGENT((a, b) -> Math.atan(a), Written.WHOLE, "arctan({0-})", "ATAN({0-})"),
  LESSER(Math::min, Written.WHOLE, "the lesser of {0-} and {1-}", "MIN({0-},{1-})"),
  GREATER(Math::max, Written.WHOLE, "the greater of {0-} and {1-}", "MAX({0-},{1-})"),
  ROUND_UP((a, b) -> Rounding.up(a), Written.WHOLE, "⌈{0-}⌉", "ROUNDUP(ROUND({0-},6),0)"),
  ROUND_DOWN((a, b) -> Rounding.down(a), Written.WHOLE, "⌊{0-}⌋", "ROUNDDOWN(ROUND({0-},6),0)"),
  TO_WHOLE(
      (a, b) -> Rounding.halfUp(a, 0), Written.WHOLE, "{0-} to the nearest whole", "ROUND({0-},0)"),
  TO_CENTS((a, b) -> Rounding.halfUp(a, 2), Written.WHOLE, "{0-} to the cent", "ROUND({0-},2)");

  private static final Pattern SLOT = Pattern.compile("\\{(\\d)([+-]?)}");

  private final DoubleBinaryOperator value;
  private final int binding;
  private final String words;
  private final String cell;

  Operator(DoubleBinaryOperator value, int binding, String words, String cell) {
    this.value = value;
    this.binding = binding;
    this.words = words;
    this.cell = cell;
  }

  double value(List<Figure<?>> arguments) {
    return value.applyAsDouble(
        arguments.get(0).number(), arguments.size() == 1 ? 0 : arguments.get(1).number());
  }

  Written words(List<Figure<?>> arguments, Notation notation) {
    return new Written(filled(words, arguments, notation), binding);
  }

  Written cell(List<Figure<?>> arguments, Notation notation) {
    return new Written(filled(cell, arguments, notation), binding);
  }

  private String filled(String pattern, List<Figure<?>> arguments, Notation notation) {
    return SLOT.matcher(pattern)
        .replaceAll(
            slot -> {
              Written operand = notation.of(arguments.get(Integer.parseInt(slot.group(1))));
              int wanted =
                  switch (slot.group(2)) {
                    case "+" -> binding + 1;
                    case "-" -> 0;
                    default -> binding;
                  };
              return java.util.regex.Matcher.quoteReplacement(operand.atLeast(wanted));
            });
  }
}
