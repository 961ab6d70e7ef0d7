package sheathwright.repl.line;

import java.util.List;

/** What a line says, with the place in it at which each part begins. */
sealed interface Tree {

  /** Where it begins in the line. */
  int at();

  /** A number with a unit. */
  record Quantity(Amount amount) implements Tree {

    @Override
    public int at() {
      return amount.from();
    }
  }

  /** A number without one, or digits and letters that only a word of the trade is written with. */
  record Plain(String text, int at) implements Tree {}

  /** A text in quotes, quotes included. */
  record Text(String java, int at) implements Tree {}

  /** A name. */
  record Name(String name, int at) implements Tree {}

  /** A part of an answer, by name. */
  record Part(Tree of, String name, int at) implements Tree {}

  /**
   * A call.
   *
   * @param of what it is called on; null for a function
   * @param isNew whether it makes a thing
   */
  record Call(Tree of, String name, List<Argument> arguments, boolean isNew, int at)
      implements Tree {}

  /** Two things and the operator between them. */
  record Operation(Tree left, Between sign, Tree right) implements Tree {

    @Override
    public int at() {
      return sign.at();
    }
  }

  /** Two things compared. */
  record Comparison(Tree left, Between sign, Tree right) implements Tree {

    @Override
    public int at() {
      return sign.at();
    }
  }

  /**
   * The sign between two things.
   *
   * @param left what stands before it, as it was typed
   * @param right what stands behind it, as it was typed
   */
  record Between(String sign, String left, String right, int at) {}

  /** A minus before something. */
  record Minus(Tree of, int at) implements Tree {}

  /** Something in brackets. */
  record Bracketed(Tree inside, int at) implements Tree {}

  /** A name given a value. */
  record Assignment(String name, Tree value, int at) implements Tree {}

  /**
   * What stands between two commas of a call: a word where a word is due, else an expression.
   *
   * @param name by which it is given; empty if by its place
   * @param line in which it stands
   * @param tokens of it, without the name
   */
  record Argument(String name, String line, List<Token> tokens, int at) {

    /** As it was typed, without the name. */
    String raw() {
      return line.substring(tokens.get(0).from(), tokens.get(tokens.size() - 1).to());
    }

    /** As an expression. */
    Tree tree() {
      return new Parser(line, tokens).whole();
    }

    boolean isNamed() {
      return !name.isEmpty();
    }
  }
}
