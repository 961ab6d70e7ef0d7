package sheathwright.workbook.part;

/**
 * An axis of a chart. A number that a program is to find by itself is not a number.
 *
 * @param title what it measures
 * @param format how its numbers are written; empty along the chart, where words stand
 * @param least where it begins
 * @param most where it ends
 * @param step from one line across to the next
 * @param isBelow whether its words stand below the chart, and not beside the axis
 */
public record ChartAxis(
    String title, String format, double least, double most, double step, boolean isBelow) {

  private static final int ALONG = 0;
  private static final int UP = 1;

  /** Along the chart, with words. */
  public static ChartAxis along(String title, boolean isBelow) {
    return new ChartAxis(title, "", Double.NaN, Double.NaN, Double.NaN, isBelow);
  }

  /** Up the chart, with numbers. */
  public static ChartAxis up(String title, String format, double least, double most, double step) {
    return new ChartAxis(title, format, least, most, step, false);
  }

  /** Where a chart's kind names its axes. */
  static void writeNumbers(XmlText xml) {
    xml.empty("c:axId", "val", ALONG).empty("c:axId", "val", UP);
  }

  /** As a chart's part holds it (ECMA-376, 21.2.2.25 and 21.2.2.226). */
  void writeTo(XmlText xml) {
    boolean isUp = !format.isEmpty();
    String tag = isUp ? "c:valAx" : "c:catAx";
    xml.open(tag).empty("c:axId", "val", isUp ? UP : ALONG);
    xml.open("c:scaling").empty("c:orientation", "val", "minMax");
    number(xml, "c:max", most);
    number(xml, "c:min", least);
    xml.close("c:scaling").empty("c:delete", "val", 0).empty("c:axPos", "val", isUp ? "l" : "b");
    if (isUp) {
      xml.open("c:majorGridlines").open("c:spPr").open("a:ln").open("a:solidFill");
      xml.empty("a:prstClr", "val", "ltGray").close("a:solidFill").close("a:ln");
      xml.close("c:spPr").close("c:majorGridlines");
    }
    title(xml);
    if (isUp) {
      xml.empty("c:numFmt", "formatCode", format, "sourceLinked", 1);
    }
    xml.empty("c:majorTickMark", "val", "cross").empty("c:minorTickMark", "val", "none");
    xml.empty("c:tickLblPos", "val", isBelow ? "low" : "nextTo");
    xml.empty("c:crossAx", "val", isUp ? ALONG : UP).empty("c:crosses", "val", "autoZero");
    if (isUp) {
      xml.empty("c:crossBetween", "val", "midCat");
      number(xml, "c:majorUnit", step);
    } else {
      xml.empty("c:auto", "val", 0);
    }
    xml.close(tag);
  }

  private void title(XmlText xml) {
    xml.open("c:title").open("c:tx").open("c:rich").empty("a:bodyPr").empty("a:lstStyle");
    xml.open("a:p").open("a:pPr", "algn", "l").empty("a:defRPr").close("a:pPr");
    xml.open("a:r").empty("a:rPr", "lang", "en").leaf("a:t", title).close("a:r").close("a:p");
    xml.close("c:rich").close("c:tx").empty("c:layout").empty("c:overlay", "val", 0);
    xml.close("c:title");
  }

  private static void number(XmlText xml, String tag, double value) {
    if (!Double.isNaN(value)) {
      xml.empty(tag, "val", value);
    }
  }
}
