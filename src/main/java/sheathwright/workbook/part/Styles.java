package sheathwright.workbook.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The part of a workbook's file that says how cells look (ECMA-376, 18.8). */
public final class Styles {

  static final String NO_FILL = "<fill><patternFill patternType=\"none\"/></fill>";

  /** Programs expect it behind the first, whether a cell has it or not. */
  private static final String SECOND_FILL = "<fill><patternFill patternType=\"gray125\"/></fill>";

  private static final String NO_BORDER =
      "<border><left/><right/><top/><bottom/><diagonal/></border>";

  /** Letters without feet, whose kind a theme may change. */
  private static final String PLAIN_LETTERS = "<family val=\"2\"/><scheme val=\"minor\"/>";

  /** Ways of writing numbers that every program knows by these numbers (ECMA-376, 18.8.30). */
  private static final Map<String, Integer> KNOWN_FORMATS =
      Map.of(CellStyle.GENERAL, 0, "#,##0", 3, "#,##0.00", 4, "# ??/??", 13, "@", 49);

  private static final int FIRST_OWN_FORMAT = 164;

  private final Font plain;
  private final List<CellStyle> all = new ArrayList<>();
  private final Numbered differences = new Numbered("dxfs");

  /** Looks of a workbook whose cells look plain if nobody says how they look. */
  public Styles(Font plain) {
    this.plain = plain;
  }

  /** A new look, plain so far. */
  public CellStyle style() {
    CellStyle style = new CellStyle(all.size() + 1, plain);
    all.add(style);
    return style;
  }

  /** A new look, so far like another. */
  public CellStyle like(CellStyle other) {
    CellStyle style = style();
    style.like(other);
    return style;
  }

  /**
   * The number of a look that differs from a cell's own by the color of its words.
   *
   * @param color from the list that every program has (ECMA-376, 18.8.27)
   */
  int ofWords(int color) {
    return differences.numberOf(
        new XmlText()
            .open("dxf")
            .open("font")
            .empty("color", "indexed", color)
            .close("font")
            .close("dxf")
            .toString());
  }

  /** The whole part. */
  public String text() {
    Map<String, Integer> formats = new LinkedHashMap<>();
    Numbered fonts = new Numbered("fonts");
    Numbered fills = new Numbered("fills");
    Numbered borders = new Numbered("borders");
    fonts.numberOf(plain.text(PLAIN_LETTERS));
    fills.numberOf(NO_FILL);
    fills.numberOf(SECOND_FILL);
    borders.numberOf(NO_BORDER);
    XmlText looks = new XmlText().open("cellXfs", "count", all.size() + 1);
    looks.empty("xf", "numFmtId", 0, "fontId", 0, "fillId", 0, "borderId", 0, "xfId", 0);
    for (CellStyle style : all) {
      Integer known = KNOWN_FORMATS.get(style.format());
      style.writeTo(
          looks,
          known == null
              ? formats.computeIfAbsent(style.format(), own -> FIRST_OWN_FORMAT + formats.size())
              : known,
          fonts.numberOf(style.font().text("")),
          fills.numberOf(style.fillText()),
          borders.numberOf(style.borderText()));
    }
    looks.close("cellXfs");
    XmlText xml = new XmlText().add(XmlText.HEAD).open("styleSheet", "xmlns", Ooxml.SHEETS);
    if (!formats.isEmpty()) {
      xml.open("numFmts", "count", formats.size());
      formats.forEach((code, id) -> xml.empty("numFmt", "numFmtId", id, "formatCode", code));
      xml.close("numFmts");
    }
    fonts.writeTo(xml);
    fills.writeTo(xml);
    borders.writeTo(xml);
    xml.open("cellStyleXfs", "count", 1)
        .empty("xf", "numFmtId", 0, "fontId", 0, "fillId", 0, "borderId", 0)
        .close("cellStyleXfs")
        .add(looks.toString());
    // what every program calls the look of a cell without one (18.8.7)
    xml.open("cellStyles", "count", 1)
        .empty("cellStyle", "name", "Normal", "xfId", 0, "builtinId", 0)
        .close("cellStyles");
    differences.writeTo(xml);
    return xml.close("styleSheet").toString();
  }
}
