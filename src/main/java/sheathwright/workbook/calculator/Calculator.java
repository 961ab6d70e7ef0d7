package sheathwright.workbook.calculator;

import java.util.List;
import java.util.Locale;
import sheathwright.catalog.Card;
import sheathwright.catalog.StartingValues;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Reached;

/**
 * One function with values to begin with.
 *
 * @param card the function
 * @param arguments one for each parameter
 * @param results what comes of them
 */
record Calculator(Card card, List<Traced> arguments, List<Traced> results) {

  /** A function with the values that it starts with. */
  static Calculator of(Card card) {
    return of(card, StartingValues.of(card));
  }

  /** A function with values of somebody's own. */
  static Calculator of(Card card, List<Traced> arguments) {
    return new Calculator(card, arguments, card.answer(arguments));
  }

  /** Whether cells can follow its arguments: nothing in its results had to be solved. */
  boolean isLive() {
    Reached reached = new Reached();
    reached.from(results);
    return reached.solutions().isEmpty();
  }

  /** Its name in words, which its tab bears. */
  String title() {
    return capital(card.name().replace('_', ' '));
  }

  /** A name in a workbook of many functions: whose it is, and what. */
  String cellName(String column) {
    return card.name() + "_" + column;
  }

  /** The same words, the first letter a capital. */
  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
