package sheathwright.repl.line;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.catalog.Card;
import sheathwright.figure.Amounts;
import sheathwright.figure.Lengths;
import sheathwright.figure.Shown;
import sheathwright.repl.line.Parser.Beyond;
import sheathwright.repl.line.Reader.Around;

/**
 * Evaluates a tree through the catalog, without a compiler. The value of each part and how Java
 * says it arise in one step, so that the two roads cannot part.
 */
final class DirectRoad {

  private static final Pattern SPOKEN_LENGTH =
      Pattern.compile("\\d+\\s*[-–]\\s*\\d+(?:[ -]\\d+)?(?:\\s*/\\s*\\d+)?");

  private final Around around;
  private final Notes notes;
  private final Arguments arguments = new Arguments(argument -> piece(argument.tree()));

  DirectRoad(Around around, Notes notes) {
    this.around = around;
    this.notes = notes;
  }

  Arguments arguments() {
    return arguments;
  }

  /** What a tree comes to. */
  Piece piece(Tree tree) {
    if (tree instanceof Tree.Quantity quantity) {
      return Piece.of(quantity.amount().java(), quantity.amount().figure());
    }
    if (tree instanceof Tree.Plain plain) {
      return plain(plain);
    }
    if (tree instanceof Tree.Text text) {
      return text(text);
    }
    if (tree instanceof Tree.Name name) {
      return name(name);
    }
    if (tree instanceof Tree.Part part) {
      return Members.part(target(part.of()), part.name());
    }
    if (tree instanceof Tree.Call call) {
      return call(call);
    }
    if (tree instanceof Tree.Operation operation) {
      return Arithmetic.of(piece(operation.left()), operation.sign(), piece(operation.right()));
    }
    if (tree instanceof Tree.Comparison compared) {
      return Arithmetic.compared(piece(compared.left()), compared.sign(), piece(compared.right()));
    }
    if (tree instanceof Tree.Minus minus) {
      return Arithmetic.negative(piece(minus.of()));
    }
    if (tree instanceof Tree.Bracketed bracketed) {
      return piece(bracketed.inside());
    }
    return beyond();
  }

  private static Piece beyond() {
    throw new Beyond();
  }

  private static Piece plain(Tree.Plain plain) {
    String text = plain.text();
    if (text.matches("\\d{1,9}")) {
      return Piece.of(text, Integer.valueOf(text));
    }
    if (text.matches("\\d*\\.?\\d+(?:[eE][-+]?\\d+)?d?") && !text.matches("0\\d+")) {
      return Piece.of(text, Double.valueOf(text));
    }
    if (text.contains("/")) {
      double number = Lengths.inches(text);
      return Piece.of(Shown.plain(number), number);
    }
    return Trade.spoken(text, plain.at()).orElseThrow(Beyond::new);
  }

  private static Piece text(Tree.Text text) {
    String java = text.java();
    if (!java.startsWith("\"") || java.startsWith("\"\"\"")) {
      return beyond();
    }
    return Piece.of(java, java.substring(1, java.length() - 1).translateEscapes());
  }

  private Piece name(Tree.Name name) {
    if (around.has(name.name())) {
      Object value = around.value(name.name());
      return value == null ? beyond() : Piece.of(name.name(), value);
    }
    Optional<Piece> constant = Trade.constant(name.name());
    if (constant.isPresent()) {
      return constant.get();
    }
    return Trade.spoken(name.name(), name.at()).orElseThrow(Beyond::new);
  }

  private Piece call(Tree.Call call) {
    if (call.of() != null) {
      return Members.call(target(call.of()), call.name(), call.arguments(), arguments);
    }
    if (around.isOwn(call.name())) {
      return beyond();
    }
    if (call.isNew()) {
      return Members.made(
          Trade.type(call.name()).orElseThrow(Beyond::new), call.arguments(), arguments);
    }
    Optional<Card> card = Trade.card(call.name());
    Optional<Piece> amount =
        card.isPresent() && !isPlainCall(call) ? Optional.empty() : amount(call);
    if (amount.isPresent()) {
      return amount.get();
    }
    if (card.isPresent()) {
      return new CatalogCall(card.get(), around, arguments, notes).of(call.arguments(), call.at());
    }
    for (Class<?> words : around.words()) {
      Optional<Piece> word = Members.word(words, call.name(), call.arguments(), arguments);
      if (word.isPresent()) {
        return word.get();
      }
    }
    return beyond();
  }

  /** Whether a call hands over one plain number, as a function of amounts takes it. */
  private boolean isPlainCall(Tree.Call call) {
    if (call.arguments().size() != 1 || call.arguments().get(0).isNamed()) {
      return false;
    }
    Piece piece = arguments.tried(call.arguments().get(0));
    return piece != null && piece.value() instanceof Number;
  }

  private Optional<Piece> amount(Tree.Call call) {
    if (call.arguments().size() != 1 || call.arguments().get(0).isNamed()) {
      return Optional.empty();
    }
    Tree.Argument argument = call.arguments().get(0);
    checkSpoken(call.name(), argument);
    return Members.word(Amounts.class, call.name(), call.arguments(), arguments);
  }

  /** A length between brackets is arithmetic to Java; what could be either is refused. */
  static void checkSpoken(String function, Tree.Argument argument) {
    boolean isLength = function.equals("in") || function.equals("ft");
    Matcher length = SPOKEN_LENGTH.matcher(argument.raw());
    if (isLength && length.matches()) {
      throw new Unreadable(
          argument.at(),
          "%s(%s) is arithmetic in Java, not a length; as it is spoken it stands in quotes: %s(\"%s\")"
              .formatted(function, argument.raw(), function, argument.raw().strip()));
    }
  }

  /** What something is called on: an answer, or a type. */
  private Piece target(Tree tree) {
    if (tree instanceof Tree.Name name
        && !around.has(name.name())
        && Trade.type(name.name()).isPresent()
        && !around.isOwn(name.name())) {
      return Piece.of(name.name(), Trade.type(name.name()).get());
    }
    Piece piece = piece(tree);
    return piece.isKnown() ? piece : beyond();
  }
}
