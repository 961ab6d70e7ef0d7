package sheathwright.workbook.part;

/**
 * What a chart shows: a line, or bars.
 *
 * @param title what it is called beside the others
 * @param along what stands below each point
 * @param up how high each point is
 * @param ink of the line or of the bars
 * @param marker of the points of a line, as the standard calls it (ECMA-376, 21.2.3.27); of bars
 *     empty
 */
public record ChartSeries(String title, ChartCells along, ChartCells up, Ink ink, String marker) {

  void writeTo(XmlText xml, int number) {
    xml.open("c:ser").empty("c:idx", "val", number).empty("c:order", "val", number);
    xml.open("c:tx").leaf("c:v", title).close("c:tx").open("c:spPr");
    boolean isLine = !marker.isEmpty();
    if (isLine) {
      ink.writeLine(xml);
    } else {
      Ink.fill(xml, ink.area());
    }
    xml.close("c:spPr");
    if (isLine) {
      xml.open("c:marker").empty("c:symbol", "val", marker).close("c:marker");
    }
    xml.open("c:cat");
    along.writeTo(xml, "str");
    xml.close("c:cat").open("c:val");
    up.writeTo(xml, "num");
    xml.close("c:val");
    if (isLine) {
      xml.empty("c:smooth", "val", 0);
    }
    xml.close("c:ser");
  }
}
