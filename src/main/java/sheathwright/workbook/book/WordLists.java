package sheathwright.workbook.book;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Shown;
import sheathwright.workbook.book.Look.Part;

/**
 * The words of drop-downs that are too long to be written into the drop-down itself, which takes
 * 255 characters: each list once, in a named range.
 */
final class WordLists {

  private static final int LONGEST_IN_PLACE = 255;

  private final Book book;
  private final Tab tab;
  private final Map<List<String>, String> written = new HashMap<>();

  WordLists(Book book, Tab tab) {
    this.book = book;
    this.tab = tab;
  }

  /** The range that holds a cell's words; empty if the drop-down can hold them itself. */
  String rangeOf(String name, List<String> options) {
    return String.join(",", options).length() <= LONGEST_IN_PLACE
        ? ""
        : written.computeIfAbsent(options, words -> write(name, words));
  }

  private String write(String name, List<String> words) {
    tab.heading("Words for " + Shown.inWords(name));
    int first = tab.next();
    for (String word : words) {
      tab.text(tab.line(), 0, word, Part.LABEL);
    }
    return book.ranges().named(name + "_words", tab, first, tab.next() - 1);
  }
}
