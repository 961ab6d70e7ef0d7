package sheathwright.workbook.paper;

import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;

/** A narrow page in large type, to be read on a phone: what it says, from the top down. */
final class PhonePage {

  /** Of the labels and of what stands beside them, in characters of the ordinary type. */
  private static final int[] WIDTHS = {47, 24};

  private static final double LINE = 19;
  private static final double HEADLINE = 44;
  private static final double SIGNATURE = 30;

  private final Tab tab;

  private PhonePage(Tab tab) {
    this.tab = tab;
  }

  /** A new tab of a book, its first. */
  static PhonePage of(Book book, String name, String subtitle) {
    Tab tab = book.tab(name, WIDTHS);
    for (int column = 0; column < WIDTHS.length; column++) {
      tab.text(0, column, column == 0 ? name : "", Part.TITLE);
      tab.text(1, column, column == 0 ? subtitle : "", Part.SUBTITLE);
    }
    tab.row(0).height(28);
    tab.row(1).height(18);
    tab.merge(1, 0, WIDTHS.length - 1);
    tab.onOnePage();
    return new PhonePage(tab);
  }

  /** The one number that the page is about. */
  void headline(String label, Figure<?> value) {
    int line = tab.line();
    tab.text(line, 0, label, Part.LARGE_LABEL);
    tab.value(line, 1, value, Part.HEADLINE);
    tab.row(line).height(HEADLINE);
  }

  void heading(String text) {
    int line = tab.line();
    tab.text(line, 0, text, Part.LARGE_HEADING);
    tab.text(line, 1, "", Part.LARGE_HEADING);
    tab.row(line).height(LINE * 1.4);
  }

  /** A label with a number or a word beside it. */
  void line(String label, Traced value) {
    tab.value(labeled(label), 1, value, Part.LARGE_RESULT);
  }

  private int labeled(String label) {
    int line = tab.line();
    tab.text(line, 0, label, Part.LARGE_LABEL);
    tab.row(line).height(LINE * tab.linesOf(label, 0, 0, Part.LARGE_LABEL) + 3);
    return line;
  }

  /** Running text across the page. */
  void text(String words) {
    int line = tab.line();
    tab.text(line, 0, words, Part.LARGE_TEXT);
    tab.merge(line, 0, WIDTHS.length - 1);
    tab.row(line).height(LINE * tab.linesOf(words, 0, WIDTHS.length - 1, Part.LARGE_TEXT) + 4);
  }

  /** Where somebody signs, with the day and the time. */
  void signature(String who) {
    int line = tab.line();
    tab.text(line, 0, who + ", date and time", Part.SIGNATURE);
    tab.text(line, 1, "", Part.SIGNATURE);
    tab.row(line).height(SIGNATURE);
  }

  /** Small print whose place is elsewhere. */
  void note(Traced value) {
    tab.skip(1);
    tab.value(tab.line(), 0, value, Part.CAPTION);
  }
}
