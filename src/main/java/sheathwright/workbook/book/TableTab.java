package sheathwright.workbook.book;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import sheathwright.figure.Traced;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.part.CellStyle;

/**
 * A table of inputs on a tab of its own, its headings over its lines as in a file. Each input
 * stands here once, all pages point at it; what stands beside the inputs is kept as text.
 */
public final class TableTab {

  /** Written into a cell as text, whatever a program takes what is typed for. */
  private static final String TEXT = "@";

  private final Book book;
  private final Tab tab;
  private final String name;
  private final int head;
  private final List<String> headings;
  private int last;

  /**
   * The headings of a table.
   *
   * @param name begins the names of its columns
   */
  public TableTab(Book book, Tab tab, String name, List<String> headings) {
    this.book = book;
    this.tab = tab;
    this.name = name;
    this.headings = headings;
    this.head = tab.holdingATable().line();
    this.last = head;
    for (int column = 0; column < headings.size(); column++) {
      tab.text(head, column, headings.get(column), Part.COLUMN_HEAD);
    }
  }

  /** Takes the next line, tall enough for what stands in it. */
  public int line(List<String> cells) {
    last = tab.line();
    tab.raiseTo(last, cells);
    return last;
  }

  /** An input under the name of its key. */
  public void keyed(int line, int column, Traced input, String help) {
    write(line, column, input);
    book.placed(input, book.ranges().cell(input.name(), name, tab, line, column), help);
  }

  /** An input of a column that has a name. */
  public void input(int line, int column, Traced input, String help) {
    write(line, column, input);
    book.placed(input, new Place(tab.name(), line, column, ""), help);
  }

  private void write(int line, int column, Traced input) {
    TabCell cell = tab.cell(line, column);
    boolean isText = Tab.unitOf(input) == null;
    cell.style(isText ? text() : book.look().of(Part.INPUT, input));
    book.later(notation -> book.write(cell, input, notation));
  }

  /** A text that no formula reads and whoever holds the workbook may change. */
  public void text(int line, int column, String text) {
    tab.text(line, column, text, Part.LISTED_INPUT_TEXT);
    tab.cell(line, column).style(text());
  }

  /** A number that no formula reads and whoever holds the workbook may change. */
  public void number(int line, int column, double number) {
    TabCell cell = tab.cell(line, column);
    cell.number(number);
    cell.style(book.look().of(Part.INPUT));
  }

  /** A text that stays as it is. */
  public void fixed(int line, int column, String text) {
    tab.text(line, column, text, Part.LABEL);
  }

  /** A number that stays as it is. */
  public void fixed(int line, int column, double number) {
    tab.number(line, column, number);
  }

  /** A cell to be filled in. */
  public void blank(int line, int column, boolean isNumber) {
    tab.cell(line, column).style(isNumber ? book.look().of(Part.INPUT) : text());
  }

  private CellStyle text() {
    return tab.styled(Part.LISTED_INPUT_TEXT, TEXT);
  }

  /** Holds the cells of a column that are to be filled in to what may be typed there. */
  public void allow(int column, List<Integer> lines, Allowed allowed) {
    List<String> cells = new ArrayList<>();
    for (int first = 0; first < lines.size(); ) {
      int end = first;
      while (end + 1 < lines.size() && lines.get(end + 1) == lines.get(end) + 1) {
        end++;
      }
      CellRangeAddress range =
          new CellRangeAddress(lines.get(first), lines.get(end), column, column);
      cells.add(range.formatAsString());
      first = end + 1;
    }
    if (!cells.isEmpty()) {
      book.held(tab, cells.stream().collect(joining(" ")), allowed);
    }
  }

  /** Gives each column of a table of many lines its name. */
  public void nameColumns() {
    int end = Math.max(last, head + 1);
    book.later(
        notation -> {
          for (int column = 0; column < headings.size(); column++) {
            String wanted = name + "_" + headings.get(column);
            book.ranges().column(wanted, tab, head + 1, end, column);
          }
        });
  }
}
