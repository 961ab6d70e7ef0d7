package sheathwright.repl.line;

import java.lang.reflect.Type;

/**
 * A part of a line: how Java says it, and what it is.
 *
 * @param java as Java says it
 * @param value what it is; null where only the running program can know
 * @param type as a method declares it; null where the value tells
 * @param isLoose whether it needs brackets before a dot
 */
record Piece(String java, Object value, Type type, boolean isLoose) {

  static Piece of(String java, Object value) {
    return new Piece(java, value, null, false);
  }

  /** One whose value only the running program will know. */
  static Piece unknown(String java) {
    return of(java, null);
  }

  static Piece loose(String java, Object value) {
    return new Piece(java, value, null, true);
  }

  boolean isKnown() {
    return value != null;
  }

  /** As it stands before a dot or beside an operator. */
  String operand() {
    return isLoose ? "(" + java + ")" : java;
  }
}
