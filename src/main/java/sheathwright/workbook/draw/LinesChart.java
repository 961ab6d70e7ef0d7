package sheathwright.workbook.draw;

import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;

/** The lines of a quote as bars, so that a homeowner sees at a glance where the money goes. */
public final class LinesChart {

  private static final int ITEM = 0;
  private static final int AMOUNT = 4;
  private static final int LINES_TALL = 11;
  private static final byte[] BARK = {0x3B, 0x4A, 0x3F};

  private LinesChart() {}

  /** Draws the chart below what stands on the page, from the list on another tab. */
  public static void draw(Book book, Tab page, Listing lines) {
    int top = page.next();
    page.skip(LINES_TALL);
    book.afterwards(() -> draw(page, top, lines));
  }

  private static void draw(Tab page, int top, Listing lines) {
    int last = lines.roll().rows().size() - 1;
    var anchor =
        page.sheet()
            .createDrawingPatriarch()
            .createAnchor(0, 0, 0, 0, 0, top, page.columns(), top + LINES_TALL);
    XSSFChart chart = page.sheet().getDrawingPatriarch().createChart(anchor);
    XDDFCategoryAxis items = chart.createCategoryAxis(AxisPosition.LEFT);
    items.setOrientation(AxisOrientation.MAX_MIN);
    XDDFValueAxis amounts = chart.createValueAxis(AxisPosition.BOTTOM);
    amounts.setCrosses(AxisCrosses.MAX);
    amounts.setCrossBetween(AxisCrossBetween.BETWEEN);
    amounts.setNumberFormat("$#,##0");
    amounts.setMinimum(0);
    amounts
        .getOrAddMajorGridProperties()
        .setLineProperties(
            new org.apache.poi.xddf.usermodel.XDDFLineProperties(
                new XDDFSolidFillProperties(XDDFColor.from(PresetColor.LIGHT_GRAY))));
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, items, amounts);
    bars.setBarDirection(BarDirection.BAR);
    bars.setVaryColors(false);
    bars.setGapWidth(60);
    XDDFChartData.Series series =
        bars.addSeries(
            new ChartColumn(lines, 0, last, ITEM).words(),
            new ChartColumn(lines, 0, last, AMOUNT).numbers());
    series.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(BARK)));
    chart.plot(bars);
  }
}
