package sheathwright.workbook.draw;

import java.util.List;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.part.Chart;
import sheathwright.workbook.part.ChartAxis;
import sheathwright.workbook.part.ChartCells;
import sheathwright.workbook.part.ChartSeries;
import sheathwright.workbook.part.Words;

/**
 * The wood against the string, before and after, as a chart of the spreadsheet program's own: it
 * follows the cells it is drawn from.
 */
public final class SagChart {

  private static final int LINES_TALL = 15;

  /**
   * The part of a list that is drawn.
   *
   * @param plane whose wood it is
   * @param listing the list, on whatever tab
   * @param first its first line to draw, from 0
   * @param last its last
   * @param along the column of what stands below the chart
   * @param before the column of heights as found
   * @param after the column of heights when the work is done
   */
  public record Part(
      String plane, Listing listing, int first, int last, int along, int before, int after) {

    private ChartColumn of(int column) {
      return new ChartColumn(listing, first, last, column);
    }
  }

  private SagChart() {}

  /** Draws the chart below what stands on the page, under a heading of its own. */
  public static void draw(Book book, Tab page, String heading, String below, Part part) {
    ChartRoom.below(book, page, heading, LINES_TALL, room -> draw(room, heading, below, part));
  }

  private static void draw(ChartRoom room, String heading, String below, Part part) {
    ChartAxis along = ChartAxis.along(below, true);
    ChartAxis up = ChartAxis.up("above the string, in", "0.00", Double.NaN, 0.25, 0.25);
    ChartCells stations = part.of(part.along()).words();
    List<ChartSeries> lines =
        List.of(
            ChartLine.BROKEN.of("before", stations, part.of(part.before()).numbers()),
            ChartLine.FULL.of("after", stations, part.of(part.after()).numbers()));
    room.fill(words(heading, below, part), new Chart(false, along, up, lines));
  }

  /** What the chart shows as it is written: it follows its cells, and these words cannot. */
  private static Words words(String heading, String below, Part part) {
    return new Words(
        Drawing.SAG.named(part.plane()),
        heading + ": chart of the wood against the string",
        "Two lines of %s points, %s: before, a broken line, %s; after, a full line, %s; in inches above the string, as this was written."
            .formatted(
                part.last() - part.first() + 1,
                below,
                part.of(part.before()).span(),
                part.of(part.after()).span()));
  }
}
