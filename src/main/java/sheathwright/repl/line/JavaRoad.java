package sheathwright.repl.line;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.figure.Amounts;
import sheathwright.figure.Figure;
import sheathwright.repl.line.Parser.Beyond;
import sheathwright.repl.line.Reader.Around;
import sheathwright.repl.line.Reading.Places;
import sheathwright.repl.line.Token.Kind;

/**
 * Rewrites what an estimator says inside a line of Java: amounts, calls of library functions by
 * name, words where a word is due. Everything else stays as it was typed.
 */
final class JavaRoad {

  private static final Pattern JAVA_NUMBER =
      Pattern.compile("(?i)0[xb][0-9a-f_]+l?|[0-9_]*\\.?[0-9_]*(?:e[-+]?\\d+)?[dfl]?");

  private final Around around;
  private final Notes notes;
  private final Arguments arguments = new Arguments(this::piece);
  private final Arguments known = new Arguments(this::knownPiece);

  JavaRoad(Around around, Notes notes) {
    this.around = around;
    this.notes = notes;
  }

  /** A line as Java. */
  String java(String line, List<Token> tokens, Places places) {
    Written written = new Written(line, tokens, places, 0, line.length());
    return written.all(false);
  }

  /** An argument with what it is, where that can be told without running the line. */
  private Piece knownPiece(Tree.Argument argument) {
    try {
      return new DirectRoad(around, notes).piece(argument.tree());
    } catch (Beyond java) {
      return piece(argument);
    }
  }

  /** What was given once, for a parameter of this name; the answer says so. */
  private Optional<Piece> fact(String name) {
    return Fact.called(name)
        .filter(fact -> around.has(fact.variable()))
        .map(
            fact -> {
              Object value = around.value(fact.variable());
              notes.given(fact.word() + " " + value);
              return Piece.of(fact.variable(), value);
            });
  }

  private Piece piece(Tree.Argument argument) {
    Optional<Amount> amount = Arguments.amount(argument);
    if (amount.isPresent()) {
      return Piece.of(amount.get().java(), amount.get().figure());
    }
    List<Token> tokens = argument.tokens();
    if (tokens.size() == 1 && tokens.get(0).text().matches("\\d+(?:\\.\\d+)?")) {
      return Piece.of(tokens.get(0).text(), Double.valueOf(tokens.get(0).text()));
    }
    int from = tokens.get(0).from();
    int to = tokens.get(tokens.size() - 1).to();
    return Piece.unknown(new Written(argument.line(), tokens, new Places(), from, to).all(true));
  }

  /** Writes some of a line's tokens as Java. */
  private final class Written {

    private final String line;
    private final List<Token> tokens;
    private final SpokenAmounts amounts;
    private final Places places;
    private final int to;
    private final StringBuilder java = new StringBuilder();
    private int done;

    Written(String line, List<Token> tokens, Places places, int from, int to) {
      this.line = line;
      this.tokens = tokens;
      this.amounts = new SpokenAmounts(line, tokens);
      this.places = places;
      this.done = from;
      this.to = to;
    }

    /** All of them; in exact ones two whole numbers divide exactly. */
    String all(boolean isExact) {
      write(0, tokens.size(), isExact);
      keep(to);
      return java.toString();
    }

    private void write(int first, int end, boolean isExact) {
      int next = first;
      while (next < end) {
        Optional<Amount> amount = amounts.at(next);
        if (amount.isPresent()) {
          next = takeAmount(amount.get(), next);
        } else if (isCall(next)) {
          next = takeCall(next);
        } else if (solvedBy(next).isPresent()) {
          next = takeSolved(next);
        } else {
          takeToken(next, isExact);
          next++;
        }
      }
    }

    private int takeAmount(Amount amount, int index) {
      boolean isNegative =
          index > 0
              && tokens.get(index - 1).is("-")
              && (index == 1 || !endsAnOperand(tokens.get(index - 2)))
              && tokens.get(index - 1).touches(tokens.get(index));
      if (isNegative) {
        replace(amount.from() - 1, amount.to(), amount.negative(amount.from() - 1).java());
      } else {
        replace(amount.from(), amount.to(), amount.java());
      }
      return amounts.after(amount, index);
    }

    private void takeToken(int index, boolean isExact) {
      Token token = tokens.get(index);
      if ((token.is("==") || token.is("!=")) && (isFigure(index - 1) || isFigure(index + 1))) {
        throw Arithmetic.toTheLastDigit(
            new Tree.Between(
                token.text(),
                tokens.get(index - 1).text(),
                index + 1 < tokens.size() ? tokens.get(index + 1).text() : "",
                token.from()));
      }
      boolean isBelow =
          isExact
              && index > 1
              && tokens.get(index - 1).is("/")
              && token.text().matches("\\d+")
              && tokens.get(index - 2).text().matches("\\d+");
      boolean isPlain = line.startsWith(token.text(), token.from());
      boolean isSpoken =
          token.kind() == Kind.NUMBERED
              || token.kind() == Kind.NUMBER && !JAVA_NUMBER.matcher(token.text()).matches();
      Optional<Piece> spoken =
          isSpoken ? Trade.spoken(token.text(), token.from()) : Optional.empty();
      if (isBelow) {
        replace(token.from(), token.to(), token.text() + ".0");
      } else if (spoken.isPresent()) {
        replace(token.from(), token.to(), spoken.get().java());
      } else if (!isPlain) {
        replace(token.from(), token.to(), token.text());
      }
    }

    /** Whether a token is a variable that holds a figure. */
    private boolean isFigure(int index) {
      return index >= 0
          && index < tokens.size()
          && around.has(tokens.get(index).text())
          && around.value(tokens.get(index).text()) instanceof Figure<?>;
    }

    private boolean isCall(int index) {
      Token token = tokens.get(index);
      boolean isName =
          token.kind() == Kind.WORD
              && index + 1 < tokens.size()
              && tokens.get(index + 1).is("(")
              && !around.isOwn(token.text());
      boolean isFree =
          index == 0
              || !tokens.get(index - 1).is(".")
                  && !tokens.get(index - 1).is("::")
                  && !isDeclared(tokens.get(index - 1));
      return isName
          && isFree
          && Brackets.closing(tokens, index + 1) > 0
          && (Trade.card(token.text()).isPresent() || isAmount(token.text()));
    }

    /** Whether a word before a name and a bracket makes it the name of a method of the user's. */
    private boolean isDeclared(Token before) {
      return before.kind() == Kind.WORD
          && !List.of("return", "case", "else", "do", "throw", "assert").contains(before.text());
    }

    private boolean isAmount(String name) {
      for (java.lang.reflect.Method method : Amounts.class.getMethods()) {
        if (method.getName().equals(name)) {
          return true;
        }
      }
      return false;
    }

    private int takeCall(int index) {
      int close = Brackets.closing(tokens, index + 1);
      String name = tokens.get(index).text();
      List<Tree.Argument> said = Parser.arguments(line, tokens, index + 1, close);
      Optional<Card> card = Trade.card(name);
      boolean isAmount = isAmount(name) && said.size() == 1 && !said.get(0).isNamed();
      if (isAmount) {
        DirectRoad.checkSpoken(name, said.get(0));
      }
      boolean isAsJava =
          isAmount && (card.isEmpty() || Arguments.amount(said.get(0)).isEmpty())
              || card.filter(called -> isJavaCall(called, said)).isPresent();
      if (isAsJava || card.isEmpty()) {
        card.filter(called -> !called.method().getName().equals(name))
            .ifPresent(
                called ->
                    replace(
                        tokens.get(index).from(),
                        tokens.get(index).to(),
                        called.method().getName()));
        write(index + 1, close + 1, true);
      } else {
        Piece call =
            new CatalogCall(card.get(), around, arguments, notes)
                .of(said, tokens.get(index).from());
        replace(tokens.get(index).from(), tokens.get(close).to(), call.java());
      }
      return close + 1;
    }

    /** Whether a call gives every argument by its place, none of them as a word of the trade. */
    private boolean isJavaCall(Card card, List<Tree.Argument> said) {
      if (said.size() != card.arguments().size()) {
        return false;
      }
      for (int i = 0; i < said.size(); i++) {
        Argument due = card.arguments().get(i);
        boolean isSpoken =
            said.get(i).isNamed()
                || due instanceof Argument.Plain plain
                    && plain.parameter().options() != null
                    && Arguments.option(plain.parameter().options(), said.get(i)).isPresent();
        if (isSpoken) {
          return false;
        }
      }
      return true;
    }

    /**
     * The class of ours whose method a name before a bracket is: a word that is solved, a maker.
     */
    private Optional<Class<?>> solvedBy(int index) {
      boolean isName =
          tokens.get(index).kind() == Kind.WORD
              && index + 1 < tokens.size()
              && tokens.get(index + 1).is("(")
              && Brackets.closing(tokens, index + 1) > 0;
      if (!isName) {
        return Optional.empty();
      }
      if (index > 0 && tokens.get(index - 1).is(".")) {
        return calledOn(index);
      }
      boolean isFree = index == 0 || !tokens.get(index - 1).is("::");
      boolean isOwn =
          around.isOwn(tokens.get(index).text()) || index > 0 && isDeclared(tokens.get(index - 1));
      return isFree && !isOwn ? SolvedWords.of(tokens.get(index).text()) : Optional.empty();
    }

    /**
     * What a method is called on, if that is a variable that holds one of our things, or a type.
     */
    private Optional<Class<?>> calledOn(int index) {
      boolean isPlain =
          index > 1
              && tokens.get(index - 2).kind() == Kind.WORD
              && (index == 2 || !tokens.get(index - 3).is("."));
      if (!isPlain) {
        return Optional.empty();
      }
      String of = tokens.get(index - 2).text();
      if (around.has(of) && around.value(of) != null) {
        Class<?> type = around.value(of).getClass();
        return Optional.<Class<?>>of(type)
            .filter(each -> each.getPackageName().startsWith("sheathwright"));
      }
      return around.isOwn(of) ? Optional.empty() : Trade.type(of);
    }

    private int takeSolved(int index) {
      int close = Brackets.closing(tokens, index + 1);
      String name = tokens.get(index).text();
      List<Tree.Argument> said = Parser.arguments(line, tokens, index + 1, close);
      Optional<String> written =
          Members.written(solvedBy(index).orElseThrow(), name, said, known, JavaRoad.this::fact);
      if (written.isEmpty()) {
        write(index + 1, close + 1, false);
      } else {
        replace(tokens.get(index).from(), tokens.get(close).to(), written.get());
      }
      return close + 1;
    }

    private void replace(int from, int end, String text) {
      keep(from);
      places.put(java.length(), from);
      java.append(text);
      done = end;
      places.put(java.length(), end);
    }

    private void keep(int end) {
      java.append(line, done, Math.max(done, end));
      done = Math.max(done, end);
    }
  }

  private static boolean endsAnOperand(Token token) {
    return token.kind() != Kind.SIGN && !token.isWord("return")
        || token.is(")")
        || token.is("]")
        || token.is("}");
  }
}
