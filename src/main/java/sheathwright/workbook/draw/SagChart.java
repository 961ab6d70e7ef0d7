package sheathwright.workbook.draw;

import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.Grouping;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;

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
    XSSFChart chart = room.chart(words(heading, below, part));
    chart.getOrAddLegend().setPosition(LegendPosition.TOP);
    XDDFCategoryAxis along = chart.createCategoryAxis(AxisPosition.BOTTOM);
    along.setTitle(below);
    along.setTickLabelPosition(AxisTickLabelPosition.LOW);
    XDDFValueAxis height = chart.createValueAxis(AxisPosition.LEFT);
    height.setTitle("above the string, in");
    height.setNumberFormat("0.00");
    height.setMaximum(0.25);
    height.setMajorUnit(0.25);
    ChartLine.grid(height);
    var lines = (XDDFLineChartData) chart.createData(ChartTypes.LINE, along, height);
    lines.setGrouping(Grouping.STANDARD);
    XDDFCategoryDataSource stations = part.of(part.along()).words();
    ChartLine.BROKEN.add(lines, "before", stations, part.of(part.before()));
    ChartLine.FULL.add(lines, "after", stations, part.of(part.after()));
    chart.plot(lines);
  }

  /** What the chart shows as it is written: it follows its cells, and these words cannot. */
  private static Layer.Words words(String heading, String below, Part part) {
    return new Layer.Words(
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
