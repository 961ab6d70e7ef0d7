package sheathwright.workbook.draw;

import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;

/** How a line of a chart looks: two can be told apart without their colors. */
enum ChartLine {
  /** What was, or was meant. */
  BROKEN(MarkerStyle.DIAMOND, new byte[] {(byte) 0x9A, 0x2F, 0x1C}),
  /** What is, or will be. */
  FULL(MarkerStyle.SQUARE, new byte[] {0x3B, 0x4A, 0x3F});

  private static final double WIDTH = 1.75;

  private final MarkerStyle marker;
  private final byte[] ink;

  ChartLine(MarkerStyle marker, byte[] ink) {
    this.marker = marker;
    this.ink = ink;
  }

  /** Adds a line of this look to a chart. */
  void add(
      XDDFLineChartData lines, String title, XDDFCategoryDataSource below, ChartColumn heights) {
    var series = (XDDFLineChartData.Series) lines.addSeries(below, heights.numbers());
    series.setTitle(title, null);
    series.setSmooth(false);
    series.setMarkerStyle(marker);
    var properties = new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(ink)));
    properties.setWidth(WIDTH);
    if (this == BROKEN) {
      properties.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
    }
    series.setLineProperties(properties);
  }

  /** Draws lines across at the steps of an axis. */
  static void grid(XDDFValueAxis axis) {
    axis.getOrAddMajorGridProperties()
        .setLineProperties(
            new XDDFLineProperties(
                new XDDFSolidFillProperties(XDDFColor.from(PresetColor.LIGHT_GRAY))));
  }
}
