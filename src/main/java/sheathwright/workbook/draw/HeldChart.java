package sheathwright.workbook.draw;

import org.apache.poi.xddf.usermodel.chart.AxisPosition;
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
    XSSFChart chart = room.chart(words(heading, part));
    chart.getOrAddLegend().setPosition(LegendPosition.TOP);
    XDDFCategoryAxis along = chart.createCategoryAxis(AxisPosition.BOTTOM);
    along.setTitle("percentile of the forecast");
    XDDFValueAxis share = chart.createValueAxis(AxisPosition.LEFT);
    share.setTitle("houses that stayed within, %");
    share.setNumberFormat("0");
    share.setMinimum(0);
    share.setMaximum(100);
    share.setMajorUnit(20);
    ChartLine.grid(share);
    var lines = (XDDFLineChartData) chart.createData(ChartTypes.LINE, along, share);
    lines.setGrouping(Grouping.STANDARD);
    XDDFCategoryDataSource names = part.of(part.names()).words();
    ChartLine.BROKEN.add(lines, "meant", names, part.of(part.meant()));
    ChartLine.FULL.add(lines, "held", names, part.of(part.held()));
    chart.plot(lines);
  }

  /** What the chart shows as it is written: it follows its cells, and these words cannot. */
  private static Layer.Words words(String heading, Part part) {
    return new Layer.Words(
        "What was meant and what held",
        heading + ": chart of what was meant and what held",
        "Two lines of %s points: how many houses of 100 each percentile was meant to hold in, a broken line, and how many it held in, a full line, as this was written."
            .formatted(part.listing().roll().rows().size()));
  }
}
