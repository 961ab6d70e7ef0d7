package sheathwright.repl.line;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import sheathwright.figure.Figure;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * Puts the traced operation where the compiler says that an operator does not fit, and asks an
 * answer whether it holds where Java wants yes or no; a name that Java does not know and the trade
 * does becomes the word that it is, and a part of an answer is asked for as Java does.
 */
public final class Mending {

  /** So often a line is mended and compiled again. */
  public static final int MOST_TIMES = 8;

  private static final Pattern BINARY =
      Pattern.compile(
          "bad operand types for binary operator '(\\S+)'\\s+first type:\\s+(.*?)\\s+second type:\\s+(.*?)(?:\\s+where .*)?",
          Pattern.DOTALL);
  private static final Pattern UNARY =
      Pattern.compile("bad operand type (.*) for unary operator '(\\S)'.*", Pattern.DOTALL);
  private static final Pattern TO_BOOLEAN =
      Pattern.compile("incompatible types: (.*) cannot be converted to boolean.*", Pattern.DOTALL);
  private static final Pattern HIDDEN = Pattern.compile("\\w+ has private access in .*");
  private static final Pattern UNKNOWN =
      Pattern.compile("cannot find symbol\\s+symbol:\\s+variable (\\w+)(?:\\s.*)?", Pattern.DOTALL);
  private static final Pattern PLAIN_NUMBER =
      Pattern.compile("int|double|long|float|Integer|Double");
  private static final Pattern NEVER_ASKED =
      Pattern.compile(
          PLAIN_NUMBER.pattern()
              + "|char|byte|short|Long|String|Object|.*\\[]|(?:List|Map|Set|Optional)<.*>");
  private static final Pattern SIMPLE = Pattern.compile("[\\w.]+(?:\\([^()]*\\))?");

  private final String source;
  private final String wrapped;
  private final int shift;

  /**
   * Something that the compiler does not take.
   *
   * @param message in the compiler's words
   * @param at the place in the line that it points at
   * @param from where what is wrong begins
   * @param to where it ends
   */
  public record Fault(String message, int at, int from, int to) {}

  private Mending(String source, String before, String after) {
    this.source = source;
    this.wrapped = before + source + after;
    this.shift = before.length();
  }

  /**
   * A line of Java with one fault mended; nothing if it is of another kind.
   *
   * @throws Unreadable if the operator has no meaning there, or a word of the trade has two
   */
  public static Optional<String> mended(String source, Fault fault) {
    Matcher condition = TO_BOOLEAN.matcher(fault.message());
    if (condition.matches() && !NEVER_ASKED.matcher(condition.group(1)).matches()) {
      return Optional.of(asked(source, fault.from(), fault.to()));
    }
    Matcher unknown = UNKNOWN.matcher(fault.message());
    boolean isPart =
        unknown.matches()
            && source.substring(fault.from(), fault.to()).endsWith("." + unknown.group(1))
            && Character.isLowerCase(unknown.group(1).charAt(0));
    if (isPart || HIDDEN.matcher(fault.message()).matches()) {
      return Optional.of(source.substring(0, fault.to()) + "()" + source.substring(fault.to()));
    }
    if (unknown.matches()) {
      return Trade.spoken(unknown.group(1), fault.from())
          .map(
              word ->
                  source.substring(0, fault.from()) + word.java() + source.substring(fault.to()));
    }
    return new Mending(source, "class S { void m() { ", ";}}")
        .operator(fault)
        .or(() -> new Mending(source, "class S { ", "}").operator(fault));
  }

  private static String asked(String source, int from, int to) {
    String text = source.substring(from, to);
    boolean isBracketed = text.startsWith("(") && text.endsWith(")");
    String inside = isBracketed ? text.substring(1, text.length() - 1) : text;
    String call = isBracketed ? "(holds(" + inside + "))" : "holds(" + text + ")";
    return source.substring(0, from) + call + source.substring(to);
  }

  private Optional<String> operator(Fault fault) {
    Matcher binary = BINARY.matcher(fault.message());
    if (binary.matches() && isOurs(binary.group(1), binary.group(2), binary.group(3))) {
      return place(fault, true)
          .map(
              place ->
                  replaced(
                      place, binary(binary.group(1), binary.group(2), binary.group(3), place)));
    }
    Matcher unary = UNARY.matcher(fault.message());
    if (unary.matches() && isOurs(unary.group(2), unary.group(1), unary.group(1))) {
      return place(fault, false)
          .map(place -> replaced(place, unary(unary.group(2), unary.group(1), place)));
    }
    return Optional.empty();
  }

  /** Whether an operator stands between figures, or between answers that can be asked. */
  private static boolean isOurs(String sign, String first, String second) {
    if (sign.matches("&&|\\|\\||!")) {
      return !NEVER_ASKED.matcher(first).matches() && !NEVER_ASKED.matcher(second).matches();
    }
    boolean areNumbers =
        (isFigure(first) || PLAIN_NUMBER.matcher(first).matches())
            && (isFigure(second) || PLAIN_NUMBER.matcher(second).matches());
    return sign.matches("[-+*/]|[<>]=?") && areNumbers && (isFigure(first) || isFigure(second));
  }

  private static boolean isFigure(String type) {
    return type.matches("(?:[\\w.]+\\.)?Figure<.*>");
  }

  private static String unary(String sign, String type, Place place) {
    return sign.equals("!")
        ? "!holds(" + place.right() + ")"
        : product("*", type, "int", place.right(), "-1");
  }

  private static String binary(String sign, String first, String second, Place place) {
    return switch (sign) {
      case "&&", "||" ->
          asked(place.left(), first) + " " + sign + " " + asked(place.right(), second);
      case "*", "/" -> product(sign, first, second, place.left(), place.right());
      default -> like(sign, first, second, place);
    };
  }

  private static String asked(String text, String type) {
    return type.equals("boolean") ? text : "holds(" + text + ")";
  }

  private static String like(String sign, String first, String second, Place place) {
    String method = Arithmetic.method(sign);
    boolean isLeft = PLAIN_NUMBER.matcher(first).matches();
    boolean isRight = PLAIN_NUMBER.matcher(second).matches();
    String unlike = isLeft ? second : first;
    if (isLeft != isRight && !unlike.contains("Ratio")) {
      throw new Unreadable(
          place.at(),
          "%s has no unit and cannot stand beside %s at %s: give it one, 3 ft"
              .formatted(
                  isLeft ? place.left() : place.right(),
                  isLeft ? place.right() : place.left(),
                  sign));
    }
    return operand(isLeft ? "number(" + place.left() + ")" : place.left())
        + "."
        + method
        + "("
        + (isRight ? "number(" + place.right() + ")" : place.right())
        + ")";
  }

  private static String product(
      String sign, String first, String second, String left, String right) {
    boolean isLeft = PLAIN_NUMBER.matcher(first).matches();
    boolean isRight = PLAIN_NUMBER.matcher(second).matches();
    String one = isLeft ? "number(" + left + ")" : operand(left);
    String other = isRight ? "number(" + right + ")" : right;
    String call = one + "." + Arithmetic.method(sign) + "(" + other + ")";
    if (isRight && SIMPLE.matcher(left).matches()) {
      return call + ".in(" + left + ".unit())";
    }
    if (isLeft && sign.equals("*") && SIMPLE.matcher(right).matches()) {
      return call + ".in(" + right + ".unit())";
    }
    return field(sign, isLeft ? "Figure<Ratio>" : first, isRight ? "Figure<Ratio>" : second)
        .map(unit -> call + ".in(Units." + unit + ")")
        .orElse(call);
  }

  /** The unit that a product of two kinds is said in; nothing if one of them is not known. */
  private static Optional<String> field(String sign, String first, String second) {
    Optional<Unit<?>> one = unit(first);
    Optional<Unit<?>> other = unit(second);
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    Figure<?> left = Figure.of(1, one.get());
    Figure<?> right = Figure.of(1, other.get());
    Unit<?> made =
        Arithmetic.usual((sign.equals("*") ? left.times(right) : left.dividedBy(right)).unit());
    return Optional.of(Amount.field(made)).filter(name -> !name.isEmpty());
  }

  private static Optional<Unit<?>> unit(String type) {
    String wanted = type.replaceAll("\\b(?:[a-z]\\w*\\.)+|Quantity\\.|\\s", "");
    for (Field field : Units.class.getFields()) {
      if (kind(field).equals(wanted)) {
        return Optional.of((Unit<?>) Amount.valueOf(field));
      }
    }
    return Optional.empty();
  }

  private static String kind(Field unit) {
    String quantity =
        ((ParameterizedType) unit.getGenericType()).getActualTypeArguments()[0].getTypeName();
    return "Figure<" + quantity.replaceAll("[\\w.]+\\$|\\s", "") + ">";
  }

  private static String operand(String text) {
    return SIMPLE.matcher(text).matches() || text.endsWith(")") && !text.contains(" ")
        ? text
        : "(" + text + ")";
  }

  /** Both sides of an operator, and where all of it stands. */
  private record Place(String left, String right, int from, int to, int at) {}

  private String replaced(Place place, String by) {
    return source.substring(0, place.from()) + by + source.substring(place.to());
  }

  private Optional<Place> place(Fault fault, boolean isBinary) {
    JavacTask task =
        (JavacTask)
            ToolProvider.getSystemJavaCompiler()
                .getTask(null, null, errors -> {}, List.of(), null, List.of(new Source(wrapped)));
    try {
      for (CompilationUnitTree unit : task.parse()) {
        Finder finder =
            new Finder(unit, Trees.instance(task).getSourcePositions(), fault.at() + shift);
        finder.scan(unit, null);
        Tree found = isBinary ? finder.binary : finder.unary;
        if (found != null) {
          return Optional.of(place(finder, found, fault.at()));
        }
      }
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
    return Optional.empty();
  }

  private Place place(Finder finder, Tree found, int at) {
    boolean isBinary = found instanceof BinaryTree;
    Tree right =
        isBinary ? ((BinaryTree) found).getRightOperand() : ((UnaryTree) found).getExpression();
    String left = isBinary ? text(finder, ((BinaryTree) found).getLeftOperand()) : "";
    return new Place(
        left, text(finder, right), finder.from(found) - shift, finder.to(found) - shift, at);
  }

  private String text(Finder finder, Tree tree) {
    return wrapped.substring(finder.from(tree), finder.to(tree));
  }

  /** The operator at a place. */
  private static final class Finder extends TreeScanner<Void, Void> {

    private final CompilationUnitTree unit;
    private final SourcePositions positions;
    private final int at;
    private Tree binary;
    private Tree unary;

    Finder(CompilationUnitTree unit, SourcePositions positions, int at) {
      this.unit = unit;
      this.positions = positions;
      this.at = at;
    }

    int from(Tree tree) {
      return (int) positions.getStartPosition(unit, tree);
    }

    int to(Tree tree) {
      return (int) positions.getEndPosition(unit, tree);
    }

    @Override
    public Void visitBinary(BinaryTree tree, Void none) {
      if (to(tree.getLeftOperand()) <= at && at < from(tree.getRightOperand())) {
        binary = tree;
      }
      return super.visitBinary(tree, none);
    }

    @Override
    public Void visitUnary(UnaryTree tree, Void none) {
      if (from(tree) == at) {
        unary = tree;
      }
      return super.visitUnary(tree, none);
    }
  }

  /** A line as a file for the parser. */
  private static final class Source extends SimpleJavaFileObject {

    private final String text;

    Source(String text) {
      super(URI.create("string:///S.java"), JavaFileObject.Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
