package sheathwright.workbook.book;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Traced;

/**
 * What may be typed into a cell.
 *
 * @param name of the cell, for the list of its words
 * @param words one of them, if there are any
 * @param limits of a number, if it has any
 * @param unit of a number, as it is said behind its limits
 * @param help what it is, in a line; or empty
 */
public record Allowed(String name, List<String> words, Limits limits, String unit, String help) {

  /** What may be typed over a value that stands there. */
  static Allowed of(Traced input, Limits byFunction, String help) {
    Limits limits = input.step().limits().and(byFunction);
    return input instanceof Choice<?> choice
        ? new Allowed(choice.name(), choice.options(), Limits.NONE, "", help)
        : new Allowed(input.name(), List.of(), limits, ((Figure<?>) input).unit().symbol(), help);
  }

  /** In words; empty where anything may. */
  String inWords() {
    if (!words.isEmpty()) {
      return "one of the words in the list";
    }
    return limits.exist() ? (limits.inWords() + " " + unit).strip() : "";
  }
}
