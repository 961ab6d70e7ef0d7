package sheathwright.repl.line;

import java.util.List;
import java.util.regex.Pattern;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.repl.line.Parser.Beyond;

/**
 * Operators between figures and plain numbers, each the traced operation, where it has a meaning.
 */
final class Arithmetic {

  private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*");

  /** A unit of which a price can be said: {@code sheet}, {@code sq ft}. */
  private static final Pattern SAID_OF_MANY = Pattern.compile("[a-z]+(?: [a-z]+)?");

  private Arithmetic() {}

  static Piece of(Piece left, Tree.Between between, Piece right) {
    String sign = between.sign();
    if (left.value() instanceof Number one && right.value() instanceof Number other) {
      return plain(sign, left, one, right, other);
    }
    if (!isNumber(left) || !isNumber(right)) {
      throw new Beyond();
    }
    return switch (sign) {
      case "+", "-" -> sum(left, between, right);
      case "*", "/" -> product(left, between, right);
      default ->
          throw new Unreadable(
              between.at(),
              "% is the rest of a division and stands between plain numbers; ten percent is 10 %");
    };
  }

  static Piece negative(Piece of) {
    if (of.value() instanceof Integer whole) {
      return Piece.loose("-" + of.operand(), Math.negateExact(whole));
    }
    if (of.value() instanceof Double number) {
      return Piece.loose("-" + of.operand(), -number);
    }
    return product("*", of, figure(Piece.loose("-1", -1)));
  }

  static Piece compared(Piece left, Tree.Between between, Piece right) {
    String sign = between.sign();
    if (left.value() instanceof Number && right.value() instanceof Number
        || !isNumber(left)
        || !isNumber(right)) {
      throw new Beyond();
    }
    if (sign.equals("==") || sign.equals("!=")) {
      throw toTheLastDigit(between);
    }
    Figure<?> one = like(left, between.left(), right, between, "compared with");
    Figure<?> other = like(right, between.right(), left, between, "compared with");
    String method = method(sign);
    Condition condition =
        switch (sign) {
          case "<" -> one.isLessThan(other);
          case ">" -> one.isMoreThan(other);
          case "<=" -> one.isAtMost(other);
          default -> one.isAtLeast(other);
        };
    return Piece.of(call(asFigure(left), method, asFigure(right)), condition);
  }

  /** That two figures are not asked whether they are the same. */
  static Unreadable toTheLastDigit(Tree.Between between) {
    return new Unreadable(
        between.at(),
        "%s compares to the last digit; say within what: %s - %s <= 1/16 in, and the other way round"
            .formatted(between.sign(), between.left(), between.right()));
  }

  /** The method that an operator or a sign of comparison stands for. */
  static String method(String sign) {
    return switch (sign) {
      case "+" -> "plus";
      case "-" -> "minus";
      case "*" -> "times";
      case "/" -> "dividedBy";
      case "<" -> "isLessThan";
      case ">" -> "isMoreThan";
      case "<=" -> "isAtMost";
      case ">=" -> "isAtLeast";
      default -> throw new Beyond();
    };
  }

  private static Piece sum(Piece left, Tree.Between between, Piece right) {
    boolean isPlus = between.sign().equals("+");
    String verb = isPlus ? "added to" : "taken from";
    Figure<?> one = like(left, between.left(), right, between, verb);
    Figure<?> other = like(right, between.right(), left, between, verb);
    Figure<?> sum = isPlus ? one.plus(other) : one.minus(other);
    return Piece.of(call(asFigure(left), method(between.sign()), asFigure(right)), sum);
  }

  private static Piece product(Piece left, Tree.Between between, Piece right) {
    if (between.sign().equals("*")) {
      checkPriced(left, right, between.at(), between.right());
      checkPriced(right, left, between.at(), between.left());
    }
    return product(between.sign(), left, right);
  }

  /** So many of something are multiplied by dollars only as the price of each. */
  private static void checkPriced(Piece many, Piece price, int at, String said) {
    if (many.value() instanceof Figure<?> things
        && price.value() instanceof Figure<?> money
        && money.unit().equals(Units.USD)
        && SAID_OF_MANY.matcher(things.unit().symbol()).matches()) {
      String each = things.unit().symbol().replace(" ", "");
      throw new Unreadable(
          at,
          "%s is money, and not the price of each %s; write %s%s/%s"
              .formatted(
                  said,
                  things.unit().symbol(),
                  NAME.matcher(said).matches() ? said + " = " : "",
                  money.shown().replace(",", ""),
                  each));
    }
  }

  private static Piece product(String sign, Piece left, Piece right) {
    Piece one = figure(left);
    Piece other = figure(right);
    Figure<?> raw =
        sign.equals("*")
            ? ((Figure<?>) one.value()).times((Figure<?>) other.value())
            : ((Figure<?>) one.value()).dividedBy((Figure<?>) other.value());
    Unit<?> unit =
        left.value() instanceof Figure<?> figure && right.value() instanceof Number
            ? figure.unit()
            : usual(raw.unit());
    String field = Amount.field(unit);
    String java = call(one, method(sign), other);
    return field.isEmpty()
        ? Piece.of(java, raw)
        : Piece.of(java + ".in(Units." + field + ")", in(raw, unit));
  }

  private static <Q extends Quantity> Figure<Q> in(Figure<?> figure, Unit<Q> unit) {
    return figure.in(unit);
  }

  /** The unit in which the trade says such a product; its own if there is none. */
  static Unit<?> usual(Unit<?> unit) {
    if (!Amount.field(unit).isEmpty() && !unit.equals(Units.SQUARE_INCH)) {
      return unit;
    }
    List<Unit<?>> alike =
        Units.all().stream().filter(each -> each.dimension().equals(unit.dimension())).toList();
    return alike.contains(Units.SQUARE_FOOT)
        ? Units.SQUARE_FOOT
        : alike.contains(Units.RATIO) ? Units.RATIO : alike.isEmpty() ? unit : alike.get(0);
  }

  /** One side of a sum or a comparison: a plain number beside a pure number is one as well. */
  private static Figure<?> like(
      Piece piece, String said, Piece other, Tree.Between between, String verb) {
    if (piece.value() instanceof Figure<?> figure) {
      return figure;
    }
    Figure<?> beside = (Figure<?>) other.value();
    if (beside.unit().equals(Units.RATIO)) {
      return (Figure<?>) figure(piece).value();
    }
    String feet =
        beside.unit().equals(Units.FOOT) && verb.equals("taken from")
            ? "; feet and inches are written with the hyphen touching both, 14-6 ft"
            : "";
    throw new Unreadable(
        between.at(),
        "%s has no unit and %s; write %s%s"
            .formatted(
                said,
                together(said, between, verb),
                Arguments.withUnit(said, beside.unit()),
                feet));
  }

  /** What cannot be done, in the order of the words: the second is taken from the first. */
  private static String together(String plain, Tree.Between between, String verb) {
    boolean isFirst = plain.equals(between.left());
    if (verb.equals("compared with")) {
      return "cannot be compared with " + (isFirst ? between.right() : between.left());
    }
    return between.sign().equals("+")
        ? "cannot be added to " + (isFirst ? between.right() : between.left())
        : isFirst
            ? between.right() + " cannot be taken from it"
            : "cannot be taken from " + between.left();
  }

  private static Piece asFigure(Piece piece) {
    return piece.value() instanceof Number ? figure(piece) : piece;
  }

  private static Piece figure(Piece piece) {
    return piece.value() instanceof Number number
        ? Piece.of("number(" + piece.java() + ")", Figure.of(number.doubleValue(), Units.RATIO))
        : piece;
  }

  private static String call(Piece left, String method, Piece right) {
    return left.operand() + "." + method + "(" + right.java() + ")";
  }

  private static Piece plain(String sign, Piece left, Number one, Piece right, Number other) {
    boolean areWhole = one instanceof Integer && other instanceof Integer;
    if (sign.equals("/")) {
      if (other.doubleValue() == 0) {
        throw new RefusedException("nothing can be divided by zero");
      }
      String below = right.value() instanceof Integer ? right.java() + ".0" : right.operand();
      boolean isName = !right.java().matches("\\d+");
      return Piece.loose(
          left.operand() + " / " + (areWhole && isName ? "(double) " + right.operand() : below),
          one.doubleValue() / other.doubleValue());
    }
    String java = left.operand() + " " + sign + " " + right.operand();
    if (areWhole) {
      try {
        return Piece.loose(java, whole(sign, one.intValue(), other.intValue()));
      } catch (ArithmeticException tooLarge) {
        throw new Beyond();
      }
    }
    return Piece.loose(java, decimal(sign, one.doubleValue(), other.doubleValue()));
  }

  private static int whole(String sign, int one, int other) {
    return switch (sign) {
      case "+" -> Math.addExact(one, other);
      case "-" -> Math.subtractExact(one, other);
      case "*" -> Math.multiplyExact(one, other);
      default -> one % other;
    };
  }

  private static double decimal(String sign, double one, double other) {
    return switch (sign) {
      case "+" -> one + other;
      case "-" -> one - other;
      case "*" -> one * other;
      default -> one % other;
    };
  }

  private static boolean isNumber(Piece piece) {
    return piece.value() instanceof Integer
        || piece.value() instanceof Double
        || piece.value() instanceof Figure<?>;
  }
}
