package sheathwright.workbook.draw;

import java.util.function.Consumer;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Page;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.part.Anchor;
import sheathwright.workbook.part.Chart;
import sheathwright.workbook.part.Words;

/**
 * The lines of a page that a chart takes, under a heading of its own.
 *
 * @param page it stands on
 * @param top its first line
 * @param lines so many
 */
record ChartRoom(Tab page, int top, int lines) {

  private static final double POINTS_A_LINE = 15;
  private static final double POINTS_OF_THE_HEADING = 40;

  /** Leaves room below what stands on the page; it is drawn once the cells are written. */
  static void below(Book book, Tab page, String heading, int lines, Consumer<ChartRoom> drawn) {
    Page.keepTogether(page, lines * POINTS_A_LINE + POINTS_OF_THE_HEADING);
    page.heading(heading);
    ChartRoom room = new ChartRoom(page, page.next(), lines);
    page.skip(lines);
    book.afterwards(() -> drawn.accept(room));
  }

  /** Fills it with a chart. */
  void fill(Words words, Chart chart) {
    page.sheet().layer().chart(Anchor.ofCells(top, page.columns(), lines), words, chart);
  }
}
