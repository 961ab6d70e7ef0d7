package sheathwright.workbook.page;

import java.util.List;
import sheathwright.life.record.Revision;
import sheathwright.life.record.Revisions;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;

/**
 * The issues of an estimate with what changed from each to the next, and the tables as they stood
 * when it was written.
 */
final class HistoryPage {

  private static final int CHANGED = 3;

  private HistoryPage() {}

  static void write(Book book, Revisions revisions, String subtitle) {
    Tab tab = Sections.titled(book.tab(Revisions.HISTORY, 8, 14, 16, 74), subtitle);
    if (revisions.all().size() == 1) {
      // nothing has changed yet, and nobody prints that
      tab.keptBack();
    }
    headed(tab, Revisions.HEADINGS);
    for (Revision revision : revisions.all()) {
      int line = tab.line();
      tab.number(line, 0, revision.number());
      tab.text(line, 1, revision.date(), Part.LISTED_TEXT);
      tab.number(line, 2, revision.total());
      List<String> changes = revision.changes();
      for (int i = 0; i < changes.size(); i++) {
        int at = i == 0 ? line : tab.line();
        tab.text(at, CHANGED, changes.get(i), Part.LISTED_TEXT);
        tab.raiseTo(at, List.of("", "", "", changes.get(i)));
      }
    }
    kept(book, revisions.kept(), subtitle);
  }

  /** Writes the tables as they stand now, line by line. */
  static void kept(Book book, List<Revisions.Kept> lines, String subtitle) {
    Tab tab =
        Sections.titled(book.tab(Revisions.KEPT, 16, 96), subtitle).holdingATable().keptBack();
    headed(tab, Revisions.KEPT_HEADINGS);
    for (Revisions.Kept each : lines) {
      int line = tab.line();
      tab.text(line, 0, each.table(), Part.LISTED_TEXT);
      tab.text(line, 1, each.line(), Part.LISTED_TEXT);
      tab.raiseTo(line, List.of("", each.line()));
    }
  }

  private static void headed(Tab tab, List<String> headings) {
    int line = tab.line();
    for (int column = 0; column < headings.size(); column++) {
      tab.text(line, column, headings.get(column), Part.COLUMN_HEAD);
    }
  }
}
