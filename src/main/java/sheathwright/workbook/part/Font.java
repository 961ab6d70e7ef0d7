package sheathwright.workbook.part;

/**
 * Letters.
 *
 * @param name of their kind
 * @param points how tall
 * @param color red, green and blue, six digits
 */
public record Font(String name, double points, String color, boolean isBold, boolean isUnderlined) {

  /** Plain letters. */
  public Font(String name, double points, String color) {
    this(name, points, color, false, false);
  }

  /** The same in another size. */
  public Font tall(double other) {
    return new Font(name, other, color, isBold, isUnderlined);
  }

  /** The same in another color. */
  public Font in(String other) {
    return new Font(name, points, other, isBold, isUnderlined);
  }

  public Font bold() {
    return new Font(name, points, color, true, isUnderlined);
  }

  public Font underlined() {
    return new Font(name, points, color, isBold, true);
  }

  /** As the part of looks holds it (ECMA-376, 18.8.22). */
  String text(String more) {
    XmlText xml = new XmlText().open("font");
    if (isBold) {
      xml.empty("b");
    }
    if (isUnderlined) {
      xml.empty("u");
    }
    xml.empty("sz", "val", points).empty("color", "rgb", CellStyle.OPAQUE + color);
    return xml.empty("name", "val", name).add(more).close("font").toString();
  }
}
