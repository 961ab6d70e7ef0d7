package sheathwright.workbook.part;

/**
 * How a shape is drawn: an area filled or left open, and a line of its own or none.
 *
 * @param area its color, six digits; empty where it is left open
 * @param line its color; empty where there is none
 * @param points how wide the line is
 */
public record Ink(String area, String line, double points, boolean isDashed) {

  /** Neither an area nor a line. */
  static final Ink NONE = new Ink("", "", 0, false);

  /** The same, its area left open. */
  Ink open() {
    return new Ink("", line, points, isDashed);
  }

  void writeTo(XmlText xml) {
    fill(xml, area);
    writeLine(xml);
  }

  /** Only its line. */
  void writeLine(XmlText xml) {
    if (line.isEmpty()) {
      xml.open("a:ln");
      fill(xml, line);
    } else {
      xml.open("a:ln", "w", Math.round(points * Anchor.UNITS_A_POINT));
      fill(xml, line);
      if (isDashed) {
        xml.empty("a:prstDash", "val", "dash");
      }
    }
    xml.close("a:ln");
  }

  /** A fill of a color, or none. */
  static void fill(XmlText xml, String color) {
    if (color.isEmpty()) {
      xml.empty("a:noFill");
    } else {
      xml.open("a:solidFill").empty("a:srgbClr", "val", color).close("a:solidFill");
    }
  }
}
