package sheathwright.workbook.book;

import sheathwright.figure.Traced;
import sheathwright.workbook.book.Look.Part;

/**
 * A page that is written to somebody: one large number, sentences that end with their amounts,
 * words in a frame, lines to sign on. All of it stands on one sheet of paper.
 */
public final class Letter {

  private static final double LINE = 14;
  private static final double BOX_AIR = 8;
  private static final double LARGEST = 38;
  private static final double SIGNATURE_HEIGHT = 30;

  private final Tab tab;

  private Letter(Tab tab) {
    this.tab = tab;
  }

  /** A letter on a tab, which is printed on one sheet of paper. */
  public static Letter on(Tab tab) {
    tab.onOnePage();
    return new Letter(tab);
  }

  /** The tab that it stands on. */
  public Tab tab() {
    return tab;
  }

  /** The one number of the page, with what it is. */
  public void figure(Traced value, String words) {
    figure(tab.line(), value, words);
  }

  /** The same on a line that was kept free for it. */
  public void figure(int line, Traced value, String words) {
    tab.value(line, 0, value, Part.FIGURE);
    sentence(line, words, 1, tab.columns() - 1, Part.NOTE);
    tab.row(line).height(LARGEST);
  }

  /** Words across the page that are no sentence. */
  public void line(String words, Part part) {
    sentence(tab.line(), words, 0, tab.columns() - 1, part);
  }

  /** A sentence across the page. */
  public void sentence(String words) {
    sentence(tab.line(), words, 0, tab.columns() - 1, Part.SENTENCE);
  }

  /** The sum of what stands above. */
  public void total(String words, Traced amount) {
    int line = tab.line();
    for (int column = 0; column < tab.columns() - 1; column++) {
      tab.text(line, column, column == 0 ? words : "", Part.TOTAL_LABEL);
    }
    tab.value(line, tab.columns() - 1, amount, Part.TOTAL);
  }

  /** A sentence that ends with an amount. */
  public void sentence(String words, Traced amount) {
    int line = tab.line();
    sentence(line, words, 0, tab.columns() - 2, Part.SENTENCE);
    tab.value(line, tab.columns() - 1, amount, Part.SENTENCE_AMOUNT);
  }

  /** A sentence that ends with how many, and with an amount. */
  public void sentence(String words, Traced count, Traced amount) {
    int line = tab.line();
    sentence(line, words, 0, tab.columns() - 3, Part.SENTENCE);
    tab.value(line, tab.columns() - 2, count, Part.SENTENCE_AMOUNT);
    tab.value(line, tab.columns() - 1, amount, Part.SENTENCE_AMOUNT);
  }

  /** A sentence that ends with a part of a whole, in percent, and with what that is. */
  public void share(String words, Traced percent, Traced amount) {
    int column = tab.columns() - 2;
    int line = tab.next();
    sentence(words, percent, amount);
    tab.cell(line, column).style(tab.styled(Part.SENTENCE_AMOUNT, "0.##\" %\""));
  }

  /** A sentence beside what it is about. */
  public void fact(String label, String words) {
    int line = tab.line();
    tab.text(line, 0, label, Part.LABEL);
    sentence(line, words, 1, tab.columns() - 1, Part.SENTENCE);
  }

  /** A sentence beside what it is about, in a cell that whoever reads it may change. */
  public void choice(String words, Traced amount, Traced tick) {
    int line = tab.line();
    sentence(line, words, 0, tab.columns() - 3, Part.SENTENCE);
    tab.value(line, tab.columns() - 2, amount, Part.SENTENCE_AMOUNT);
    tab.value(line, tab.columns() - 1, tick, Part.RESULT);
  }

  /** Words in a frame. */
  public void box(String words, boolean isStop) {
    int line = tab.line();
    Part part = isStop ? Part.BOX_OF_STOP : Part.BOX;
    sentence(line, words, 0, tab.columns() - 1, part);
    tab.row(line).height(LINE * tab.linesOf(words, 0, tab.columns() - 1, part) + BOX_AIR);
  }

  /** A line to sign on. */
  public void signature(String who) {
    int line = tab.line();
    for (int column = 0; column < tab.columns(); column++) {
      tab.text(line, column, column == 0 ? who : "", Part.SIGNATURE);
    }
    tab.row(line).height(SIGNATURE_HEIGHT);
  }

  private void sentence(int line, String words, int first, int last, Part part) {
    for (int column = first; column <= last; column++) {
      tab.text(line, column, column == first ? words : "", part);
    }
    if (last > first) {
      tab.merge(line, first, last);
    }
    tab.row(line).height(LINE * tab.linesOf(words, first, last, part) + 3);
  }
}
