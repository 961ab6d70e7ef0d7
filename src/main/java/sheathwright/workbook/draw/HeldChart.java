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
 * How often percentiles were meant to hold and how often they did, as a chart of the spreadsheet
 * program's own: it follows the cells it is drawn from.
 */
public final class HeldChart {

  private static final int LINES_TALL = 18;

  /**
   * The list that is drawn, whole.
   *
   * @param listing the list
   * @param names the column of what stands below the chart
   * @param meant the column of percents that were meant
   * @param held the column of percents that held
   */
  public record Part(Listing listing, int names, int meant, int held) {

    private ChartColumn of(int column) {
      return new ChartColumn(listing, 0, listing.roll().rows().size() - 1, column);
    }
  }

  private HeldChart() {}

  /** Draws the chart below what stands on the page, under a heading of its own. */
  public static void draw(Book book, Tab page, String heading, Part part) {
    ChartRoom.below(book, page, heading, LINES_TALL, room -> draw(room, heading, part));
  }

  private static void draw(ChartRoom room, String heading, Part part) {
    ChartAxis along = ChartAxis.along("percentile of the forecast", false);
    ChartAxis up = ChartAxis.up("houses that stayed within, %", "0", 0, 100, 20);
    ChartCells names = part.of(part.names()).words();
    List<ChartSeries> lines =
        List.of(
            ChartLine.BROKEN.of("meant", names, part.of(part.meant()).numbers()),
            ChartLine.FULL.of("held", names, part.of(part.held()).numbers()));
    room.fill(words(heading, part), new Chart(false, along, up, lines));
  }

  /** What the chart shows as it is written: it follows its cells, and these words cannot. */
  private static Words words(String heading, Part part) {
    return new Words(
        "What was meant and what held",
        heading + ": chart of what was meant and what held",
        "Two lines of %s points: how many houses of 100 each percentile was meant to hold in, a broken line, and how many it held in, a full line, as this was written."
            .formatted(part.listing().roll().rows().size()));
  }
}
