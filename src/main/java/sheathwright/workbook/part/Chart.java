package sheathwright.workbook.part;

import java.util.List;

/**
 * A chart of the spreadsheet program's own, which follows the cells it is drawn from (ECMA-376,
 * 21.2): lines with words above that tell them apart, or bars.
 *
 * @param isOfBars whether it is bars
 * @param along the axis below
 * @param up the axis at the left
 */
public record Chart(boolean isOfBars, ChartAxis along, ChartAxis up, List<ChartSeries> series)
    implements Pasted {

  /** Between two bars, in percent of one. */
  private static final int GAP = 35;

  @Override
  public String link() {
    return Ooxml.LINKS + "/chart";
  }

  /** The whole part. */
  public String text() {
    XmlText xml = new XmlText().add(XmlText.HEAD);
    xml.open("c:chartSpace", "xmlns:c", Ooxml.CHARTS, "xmlns:a", Ooxml.SHAPES);
    xml.open("c:chart").open("c:plotArea").empty("c:layout");
    if (isOfBars) {
      xml.open("c:barChart").empty("c:barDir", "val", "col");
      xml.empty("c:grouping", "val", "clustered").empty("c:varyColors", "val", 0);
      writeSeries(xml);
      xml.empty("c:gapWidth", "val", GAP);
      ChartAxis.writeNumbers(xml);
      xml.close("c:barChart");
    } else {
      xml.open("c:lineChart").empty("c:grouping", "val", "standard");
      writeSeries(xml);
      ChartAxis.writeNumbers(xml);
      xml.close("c:lineChart");
    }
    along.writeTo(xml);
    up.writeTo(xml);
    xml.close("c:plotArea");
    if (!isOfBars) {
      xml.open("c:legend").empty("c:legendPos", "val", "t").empty("c:overlay", "val", 0);
      xml.close("c:legend");
    }
    return xml.empty("c:plotVisOnly", "val", 1).close("c:chart").close("c:chartSpace").toString();
  }

  private void writeSeries(XmlText xml) {
    for (int i = 0; i < series.size(); i++) {
      series.get(i).writeTo(xml, i);
    }
  }
}
