package sheathwright.workbook.part;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** How a cell looks, in the making: until the file is written it may still be changed. */
public final class CellStyle {

  /** Lines along the sides of a cell, as the standard calls them (ECMA-376, 18.18.3). */
  public enum Line {
    HAIR,
    THIN,
    MEDIUM,
    DOUBLE
  }

  /** The sides of a cell, in the order in which a file names them. */
  public enum Side {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM
  }

  /** Where words stand between top and bottom. */
  public enum Height {
    TOP,
    CENTER,
    BOTTOM
  }

  /** Before red, green and blue, as a color in a workbook is written. */
  static final String OPAQUE = "FF";

  /** Words as they are, and numbers with as many places as fit. */
  public static final String GENERAL = "General";

  private final int number;
  private final Map<Side, String> edges = new EnumMap<>(Side.class);
  private Font font;
  private String format = GENERAL;
  private String fill = "";
  private Height height = Height.CENTER;
  private boolean isAtTheRight;
  private boolean isBroken;
  private boolean isShrunk;
  private boolean isLocked = true;
  private boolean isQuoted;
  private int indent;

  CellStyle(int number, Font font) {
    this.number = number;
    this.font = font;
  }

  /** Takes over everything of another but its number. */
  void like(CellStyle other) {
    edges.putAll(other.edges);
    font = other.font;
    format = other.format;
    fill = other.fill;
    height = other.height;
    isAtTheRight = other.isAtTheRight;
    isBroken = other.isBroken;
    isShrunk = other.isShrunk;
    isLocked = other.isLocked;
    isQuoted = other.isQuoted;
    indent = other.indent;
  }

  /** By which a cell points at it. */
  public int number() {
    return number;
  }

  public Font font() {
    return font;
  }

  public void font(Font letters) {
    font = letters;
  }

  /** How a number is written. */
  public void format(String code) {
    format = code;
  }

  /** Fills it with a color. */
  public void fill(String color) {
    fill = color;
  }

  /** A line along one side. */
  public void edge(Side side, Line line, String color) {
    String tag = word(side);
    edges.put(
        side,
        new XmlText()
            .open(tag, "style", word(line))
            .empty("color", "rgb", OPAQUE + color)
            .close(tag)
            .toString());
  }

  public void height(Height where) {
    height = where;
  }

  /** Moves what stands in it to the right. */
  public void atTheRight(boolean isSo) {
    isAtTheRight = isSo;
  }

  public boolean isAtTheRight() {
    return isAtTheRight;
  }

  /** Breaks words into lines. */
  public void broken(boolean isSo) {
    isBroken = isSo;
  }

  public boolean isBroken() {
    return isBroken;
  }

  /** Shrinks what is too wide. */
  public void shrunk(boolean isSo) {
    isShrunk = isSo;
  }

  /** So many steps away from its side. */
  public void indent(int steps) {
    indent = steps;
  }

  public int indent() {
    return indent;
  }

  /** Lets whoever holds the workbook change it. */
  public void unlock() {
    isLocked = false;
  }

  public boolean isLocked() {
    return isLocked;
  }

  /** What is typed into it is words, whatever it looks like. */
  public void quote() {
    isQuoted = true;
  }

  String format() {
    return format;
  }

  private static String word(Enum<?> of) {
    return of.name().toLowerCase(Locale.ROOT);
  }

  /** As the part of looks holds its fill (ECMA-376, 18.8.20). */
  String fillText() {
    return fill.isEmpty()
        ? Styles.NO_FILL
        : "<fill><patternFill patternType=\"solid\"><fgColor rgb=\"%s%s\"/></patternFill></fill>"
            .formatted(OPAQUE, fill);
  }

  /** As the part of looks holds its sides (ECMA-376, 18.8.4). */
  String borderText() {
    XmlText xml = new XmlText().open("border");
    for (Side side : Side.values()) {
      xml.add(edges.getOrDefault(side, "<" + word(side) + "/>"));
    }
    return xml.empty("diagonal").close("border").toString();
  }

  /** As the part of looks holds it (ECMA-376, 18.8.45), from the numbers of what it is made of. */
  void writeTo(XmlText xml, int formatNumber, int fontNumber, int fillNumber, int borderNumber) {
    xml.begin("xf")
        .with("numFmtId", formatNumber)
        .with("fontId", fontNumber)
        .with("fillId", fillNumber)
        .with("borderId", borderNumber)
        .with("xfId", 0)
        .with("quotePrefix", isQuoted ? 1 : null)
        .with("applyNumberFormat", 1)
        .with("applyFont", 1)
        .with("applyFill", fill.isEmpty() ? null : 1)
        .with("applyBorder", edges.isEmpty() ? null : 1)
        .with("applyAlignment", 1)
        .with("applyProtection", isLocked ? null : 1)
        .opened();
    xml.begin("alignment")
        .with("horizontal", isAtTheRight ? "right" : "left")
        .with("vertical", word(height))
        .with("wrapText", isBroken ? 1 : null)
        .with("indent", indent == 0 ? null : indent)
        .with("shrinkToFit", isShrunk ? 1 : null)
        .closed();
    if (!isLocked) {
      xml.empty("protection", "locked", 0);
    }
    xml.close("xf");
  }
}
