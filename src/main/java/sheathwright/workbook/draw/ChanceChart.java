package sheathwright.workbook.draw;

import java.util.List;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import sheathwright.figure.Shown;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;

/**
 * How likely each count is, a bar each, as a chart of the spreadsheet program's own: it follows the
 * cells it is drawn from.
 */
public final class ChanceChart {

  private static final int LINES_TALL = 6;
  private static final int GAP_PERCENT = 35;
  private static final byte[] BARK = {0x3B, 0x4A, 0x3F};

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
    XSSFChart chart = room.chart(words(heading, below, part));
    XDDFCategoryAxis along = chart.createCategoryAxis(AxisPosition.BOTTOM);
    along.setTitle(below);
    XDDFValueAxis height = chart.createValueAxis(AxisPosition.LEFT);
    height.setTitle("share of houses");
    height.setNumberFormat("0%");
    height.setMinimum(0);
    height.setCrosses(AxisCrosses.AUTO_ZERO);
    ChartLine.grid(height);
    var bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, along, height);
    bars.setBarDirection(BarDirection.COL);
    bars.setBarGrouping(BarGrouping.CLUSTERED);
    bars.setGapWidth(GAP_PERCENT);
    bars.setVaryColors(false);
    var series = bars.addSeries(part.of(part.counts()).words(), part.of(part.chances()).numbers());
    series.setTitle("share of houses", null);
    series.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(BARK)));
    chart.plot(bars);
  }

  /** What the chart shows as it is written: it follows its cells, and these words cannot. */
  private static Layer.Words words(String heading, String below, Part part) {
    List<Double> chances = part.of(part.chances()).values();
    int highest = 0;
    for (int count = 1; count < chances.size(); count++) {
      highest = chances.get(count) > chances.get(highest) ? count : highest;
    }
    return new Layer.Words(
        "Chances of " + below,
        heading + ": chart of chances",
        Shown.text(
            "A bar for each number of %s from 0 to %s; the highest stands at %s, %.0f of 100 houses; none in %.0f of 100; as this was written.",
            below, part.last(), highest, chances.get(highest) * 100, chances.get(0) * 100));
  }
}
