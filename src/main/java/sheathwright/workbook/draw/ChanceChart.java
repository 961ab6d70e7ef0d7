package sheathwright.workbook.draw;

import java.util.List;
import sheathwright.figure.Shown;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.part.Chart;
import sheathwright.workbook.part.ChartAxis;
import sheathwright.workbook.part.ChartCells;
import sheathwright.workbook.part.ChartSeries;
import sheathwright.workbook.part.Ink;
import sheathwright.workbook.part.Words;

/**
 * How likely each count is, a bar each, as a chart of the spreadsheet program's own: it follows the
 * cells it is drawn from.
 */
public final class ChanceChart {

  private static final int LINES_TALL = 6;
  private static final Ink BARS = new Ink("3B4A3F", "", 0, false);

  /**
   * The part of a list that is drawn.
   *
   * @param listing the list, on whatever tab
   * @param last its last line to draw; the first is drawn too
   * @param counts the column of what is counted
   * @param chances the column of how likely each is
   */
  public record Part(Listing listing, int last, int counts, int chances) {

    private ChartColumn of(int column) {
      return new ChartColumn(listing, 0, last, column);
    }
  }

  private ChanceChart() {}

  /** Draws the chart below what stands on the page, under a heading of its own. */
  public static void draw(Book book, Tab page, String heading, String below, Part part) {
    ChartRoom.below(book, page, heading, LINES_TALL, room -> draw(room, heading, below, part));
  }

  private static void draw(ChartRoom room, String heading, String below, Part part) {
    ChartAxis along = ChartAxis.along(below, false);
    ChartAxis up = ChartAxis.up("share of houses", "0%", 0, Double.NaN, Double.NaN);
    ChartCells counts = part.of(part.counts()).words();
    ChartCells chances = part.of(part.chances()).numbers();
    ChartSeries bars = new ChartSeries("share of houses", counts, chances, BARS, "");
    room.fill(words(heading, below, part), new Chart(true, along, up, List.of(bars)));
  }

  /** What the chart shows as it is written: it follows its cells, and these words cannot. */
  private static Words words(String heading, String below, Part part) {
    List<Double> chances = part.of(part.chances()).values();
    int highest = 0;
    for (int count = 1; count < chances.size(); count++) {
      highest = chances.get(count) > chances.get(highest) ? count : highest;
    }
    return new Words(
        "Chances of " + below,
        heading + ": chart of chances",
        Shown.text(
            "A bar for each number of %s from 0 to %s; the highest stands at %s, %.0f of 100 houses; none in %.0f of 100; as this was written.",
            below, part.last(), highest, chances.get(highest) * 100, chances.get(0) * 100));
  }
}
