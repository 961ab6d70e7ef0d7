package sheathwright.workbook.audit;

import java.util.function.UnaryOperator;
import sheathwright.figure.Shown;

/**
 * What a cell holds.
 *
 * @param type of its value
 * @param formula without the sign before it; empty if it has none
 * @param value as text: a number as Java writes it
 * @param isOpen whether whoever holds the file may change it
 * @param isSolved whether a solver found it
 */
record Held(Type type, String formula, String value, boolean isOpen, boolean isSolved) {

  /** A cell in which nothing stands. */
  static final Held NOTHING = new Held(Type.TEXT, "", "", false, false);

  /** Programs write the last of seventeen digits as they like. */
  private static final double SAME_INPUT = 1e-12;

  /** Two engines may differ in the last digits of a product of many factors. */
  private static final double SAME_RESULT = 1e-9;

  /** What a value can be. */
  enum Type {
    NUMBER,
    TEXT,
    TRUTH,
    ERROR
  }

  /** The same with another formula. */
  Held with(UnaryOperator<String> other) {
    return new Held(type, other.apply(formula), value, isOpen, isSolved);
  }

  boolean isEmpty() {
    return formula.isEmpty() && value.isEmpty();
  }

  boolean isFormula() {
    return !formula.isEmpty();
  }

  boolean isNumber() {
    return type == Type.NUMBER && !value.isEmpty();
  }

  double number() {
    return Double.parseDouble(value);
  }

  /** Whether two cells show the same, whichever way each is come by. */
  boolean saysTheSameAs(Held other) {
    boolean isResult = isFormula() || other.isFormula();
    if (isNumber() && other.isNumber()) {
      double most = Math.max(Math.abs(number()), Math.abs(other.number()));
      return Math.abs(number() - other.number()) <= (isResult ? SAME_RESULT : SAME_INPUT) * most;
    }
    boolean isOfOneType = type == other.type || value.isEmpty() && other.value.isEmpty();
    return isOfOneType && plain(value).equals(plain(other.value));
  }

  private static String plain(String text) {
    return text.replace("\r\n", "\n").replace("_x000D_", "").replace('\r', '\n');
  }

  /** As a person reads it. */
  String shown() {
    return isFormula() ? "=" + formula : said();
  }

  /** What it comes to, as a person reads it. */
  String said() {
    return isNumber() ? Shown.plain(number()) : value;
  }
}
