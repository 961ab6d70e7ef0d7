package sheathwright.repl.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheathwright.repl.line.Token.Kind;

/** Makes a tree of a line's tokens; whatever is not in the small language is beyond it. */
final class Parser {

  private static final Set<String> COMPARISONS = Set.of("<", ">", "<=", ">=", "==", "!=");
  private static final Set<String> JAVA =
      Set.of(
          "if",
          "for",
          "while",
          "do",
          "switch",
          "try",
          "return",
          "throw",
          "import",
          "class",
          "record",
          "enum",
          "interface",
          "void",
          "static",
          "final",
          "instanceof",
          "null",
          "this",
          "synchronized",
          "assert",
          "package",
          "public",
          "private");

  private final String line;
  private final List<Token> tokens;
  private final SpokenAmounts amounts;
  private int next;

  Parser(String line, List<Token> tokens) {
    this.line = line;
    this.tokens = tokens;
    this.amounts = new SpokenAmounts(line, tokens);
  }

  /** A whole line: an expression, or a name given one. */
  Tree statement() {
    if (!tokens.isEmpty() && tokens.get(tokens.size() - 1).is(";")) {
      return new Parser(line, tokens.subList(0, tokens.size() - 1)).statement();
    }
    boolean isDeclared = isWord(0, "var") && size() > 2;
    int name = isDeclared ? 1 : 0;
    if (size() > name + 2 && kind(name) == Kind.WORD && tokens.get(name + 1).is("=")) {
      next = name + 2;
      return new Tree.Assignment(tokens.get(name).text(), whole(), tokens.get(name).from());
    }
    return whole();
  }

  /** An expression that takes all the tokens. */
  Tree whole() {
    Tree tree = compared();
    if (next < size()) {
      throw new Beyond();
    }
    return tree;
  }

  private Tree compared() {
    int first = next;
    Tree left = sum();
    if (next < size() && kind(next) == Kind.SIGN && COMPARISONS.contains(tokens.get(next).text())) {
      int sign = next++;
      Tree right = sum();
      return new Tree.Comparison(left, between(first, sign), right);
    }
    return left;
  }

  private Tree sum() {
    int first = next;
    Tree left = product();
    while (isSign("+") || isSign("-")) {
      int sign = next++;
      Tree right = product();
      left = new Tree.Operation(left, between(first, sign), right);
    }
    return left;
  }

  private Tree product() {
    int first = next;
    Tree left = signed();
    while (isSign("*") || isSign("/") || isSign("%")) {
      int sign = next++;
      Tree right = signed();
      left = new Tree.Operation(left, between(first, sign), right);
    }
    return left;
  }

  /** A sign with what stands on both its sides, up to here. */
  private Tree.Between between(int first, int sign) {
    Token token = tokens.get(sign);
    return new Tree.Between(token.text(), typed(first, sign), typed(sign + 1, next), token.from());
  }

  private String typed(int first, int end) {
    return line.substring(tokens.get(first).from(), tokens.get(end - 1).to());
  }

  private Tree signed() {
    if (!isSign("-")) {
      return withParts();
    }
    Token sign = tokens.get(next++);
    Tree of = signed();
    return of instanceof Tree.Quantity quantity
        ? new Tree.Quantity(quantity.amount().negative(sign.from()))
        : new Tree.Minus(of, sign.from());
  }

  private Tree withParts() {
    Tree tree = single();
    while (isSign(".") && next + 1 < size() && kind(next + 1) == Kind.WORD) {
      Token part = tokens.get(next + 1);
      next += 2;
      tree =
          isSign("(")
              ? new Tree.Call(tree, part.text(), arguments(), false, part.from())
              : new Tree.Part(tree, part.text(), part.from());
    }
    return tree;
  }

  private Tree single() {
    if (next == size()) {
      throw new Beyond();
    }
    Optional<Amount> amount = amounts.at(next);
    if (amount.isPresent()) {
      next = amounts.after(amount.get(), next);
      return new Tree.Quantity(amount.get());
    }
    Token token = tokens.get(next++);
    return switch (token.kind()) {
      case NUMBER -> number(token);
      case NUMBERED -> new Tree.Plain(token.text(), token.from());
      case TEXT -> new Tree.Text(token.text(), token.from());
      case WORD -> word(token);
      case SIGN -> bracketed(token);
      case FRACTION, MONEY, FEET, INCHES -> throw new Beyond();
    };
  }

  /** A number, and a fraction behind it: {@code 1 3/8}. */
  private Tree number(Token token) {
    boolean isMixed =
        next + 2 < size()
            && token.text().matches("\\d+")
            && tokens.get(next).text().matches("\\d+")
            && tokens.get(next + 1).is("/")
            && tokens.get(next + 2).text().matches("\\d+");
    if (!isMixed) {
      return new Tree.Plain(token.text(), token.from());
    }
    next += 3;
    return new Tree.Plain(
        token.text() + "-" + tokens.get(next - 3).text() + "/" + tokens.get(next - 1).text(),
        token.from());
  }

  private Tree word(Token token) {
    if (token.isWord("new") && next + 1 < size() && kind(next) == Kind.WORD) {
      Token type = tokens.get(next++);
      if (isSign("(")) {
        return new Tree.Call(null, type.text(), arguments(), true, token.from());
      }
    }
    if (JAVA.contains(token.text()) || token.isWord("new")) {
      throw new Beyond();
    }
    return isSign("(")
        ? new Tree.Call(null, token.text(), arguments(), false, token.from())
        : new Tree.Name(token.text(), token.from());
  }

  private Tree bracketed(Token token) {
    if (!token.is("(")) {
      throw new Beyond();
    }
    Tree inside = compared();
    if (!isSign(")")) {
      throw new Beyond();
    }
    next++;
    return new Tree.Bracketed(inside, token.from());
  }

  private List<Tree.Argument> arguments() {
    int close = Brackets.closing(tokens, next);
    if (close < 0) {
      throw new Beyond();
    }
    List<Tree.Argument> arguments = arguments(line, tokens, next, close);
    next = close + 1;
    return arguments;
  }

  /** What stands between the commas of a pair of brackets. */
  static List<Tree.Argument> arguments(String line, List<Token> tokens, int open, int close) {
    List<Tree.Argument> arguments = new ArrayList<>();
    int first = open + 1;
    while (first < close) {
      int end = Brackets.comma(tokens, first, close);
      boolean isNamed =
          end - first > 2 && tokens.get(first).kind() == Kind.WORD && tokens.get(first + 1).is("=");
      int value = isNamed ? first + 2 : first;
      if (value == end) {
        throw new Beyond();
      }
      arguments.add(
          new Tree.Argument(
              isNamed ? tokens.get(first).text() : "",
              line,
              tokens.subList(value, end),
              tokens.get(first).from()));
      first = end + 1;
    }
    return arguments;
  }

  private int size() {
    return tokens.size();
  }

  private Kind kind(int index) {
    return tokens.get(index).kind();
  }

  private boolean isSign(String sign) {
    return next < size() && tokens.get(next).is(sign);
  }

  private boolean isWord(int index, String word) {
    return index < size() && tokens.get(index).isWord(word);
  }

  /** Raised where a line goes beyond what is evaluated from its tree: it is Java's then. */
  static final class Beyond extends RuntimeException {

    private static final long serialVersionUID = 1;

    Beyond() {
      super("this is Java", null, false, false);
    }
  }
}
