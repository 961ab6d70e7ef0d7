package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import sheathwright.figure.Table;
import sheathwright.workbook.book.Look.Part;

/** A published table as it stands in a workbook, its ranges named so that look-ups find it. */
final class PrintedTable {

  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(E-?[0-9]+)?");

  private PrintedTable() {}

  /** Numbers stand at the right of their column, and so does what is written above them. */
  private static Part head(Table table, int column) {
    return column >= table.keys().size()
            && table.rows().stream()
                .map(row -> row.get(column))
                .allMatch(cell -> cell.isEmpty() || NUMBER.matcher(cell).matches())
        ? Part.COLUMN_HEAD_RIGHT
        : Part.COLUMN_HEAD;
  }

  /**
   * Writes a published table, under its caption, with its notes; words are kept in their columns.
   */
  static void write(Book book, Tab tab, Table table) {
    tab.heading(table.title());
    book.audience().notes(table).stream()
        .map(String::strip)
        .filter(note -> !note.isEmpty())
        .forEach(tab::note);
    int head = tab.line();
    boolean joined = table.keys().size() > 1;
    int first = joined ? 1 : 0;
    if (joined) {
      tab.text(head, 0, "found by", Part.COLUMN_HEAD);
    }
    List<String> headings = new ArrayList<>(table.keys());
    headings.addAll(table.columns());
    for (int i = 0; i < headings.size(); i++) {
      tab.text(head, first + i, headings.get(i), head(table, i));
    }
    for (List<String> line : table.rows()) {
      if (joined) {
        tab.text(tab.next(), 0, String.join("|", line.subList(0, table.keys().size())), Part.NOTE);
      }
      for (int i = 0; i < line.size(); i++) {
        boolean isKey = i < table.keys().size();
        if (!isKey && NUMBER.matcher(line.get(i)).matches()) {
          tab.number(tab.next(), first + i, Double.parseDouble(line.get(i)));
        } else {
          Part part = isKey || line.get(i).isEmpty() ? Part.LABEL : Part.LISTED_TEXT;
          tab.text(tab.next(), first + i, line.get(i), part);
        }
      }
      tab.raise(tab.next(), first, line);
      tab.skip(1);
    }
    book.ranges().named(table, tab, head, tab.next() - 1, first);
  }
}
