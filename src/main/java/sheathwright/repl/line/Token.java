package sheathwright.repl.line;

/**
 * One word, number, sign or text of a line.
 *
 * @param kind what it is
 * @param text as Java would write it: typographic signs are plain ones here
 * @param from where it begins in the line
 * @param to where it ends
 */
record Token(Kind kind, String text, int from, int to) {

  /** What a token is. */
  enum Kind {
    /** A name or a word of Java. */
    WORD,
    /** Digits, and the letters that touch them. */
    NUMBER,
    /** A written fraction in one sign. */
    FRACTION,
    /** Dollars: the sign and the digits that touch it. */
    MONEY,
    /** A sign and a number, as in {@code #2}. */
    NUMBERED,
    /** The mark after feet. */
    FEET,
    /** The mark after inches. */
    INCHES,
    /** A text, a character, or a block of text, quotes included. */
    TEXT,
    /** A bracket, an operator, a comma. */
    SIGN
  }

  boolean is(String sign) {
    return kind == Kind.SIGN && text.equals(sign);
  }

  boolean isWord(String word) {
    return kind == Kind.WORD && text.equals(word);
  }

  boolean touches(Token next) {
    return to == next.from;
  }
}
