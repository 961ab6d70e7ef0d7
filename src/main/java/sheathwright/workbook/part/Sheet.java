package sheathwright.workbook.part;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.Units;

/**
 * A sheet around its lines: how wide its columns are, which cells are one, where pages begin, what
 * leads elsewhere, what is drawn upon it (ECMA-376, 18.3.1).
 */
public final class Sheet {

  /** How tall a line stands of which nobody said how tall, in points. */
  public static final double LINE = 15;

  /** How wide a column is of which nobody said how wide, in characters. */
  private static final int COLUMN = 8;

  /** The last column of a sheet, from 0. */
  private static final int LAST_COLUMN = 16_383;

  /** In the list of colors that every program has (ECMA-376, 18.8.27). */
  private static final int WHITE = 9;

  private static final int DARK_RED = 16;

  private final String name;
  private final int[] widths;
  private final Styles styles;
  private final Printing printing = new Printing();
  private final DrawingLayer layer = new DrawingLayer(this);
  private final List<CellRangeAddress> merged = new ArrayList<>();
  private final TreeSet<Integer> breaks = new TreeSet<>();
  private final XmlText links = new XmlText();
  private final XmlText conditions = new XmlText();
  private boolean hasLinks;
  private int rules;
  private int frozen;
  private CellRangeAddress filled = new CellRangeAddress(0, 0, 0, 0);

  /**
   * A sheet on which nothing stands.
   *
   * @param styles of its workbook
   * @param widths of its columns, in characters
   */
  public Sheet(String name, Styles styles, int... widths) {
    this.name = name;
    this.styles = styles;
    this.widths = widths;
  }

  public String name() {
    return name;
  }

  /** How it is printed. */
  public Printing printing() {
    return printing;
  }

  /** What is drawn upon it. */
  public DrawingLayer layer() {
    return layer;
  }

  /** How wide a column is, in dots of a screen. */
  public double dots(int column) {
    int characters = column < widths.length ? widths[column] : COLUMN;
    return (float) (characters * (double) Units.DEFAULT_CHARACTER_WIDTH);
  }

  /** Cells of one line, made one; no two of these may meet. */
  public void merge(int line, int first, int last) {
    merged.add(new CellRangeAddress(line, line, first, last));
  }

  /** All cells that were made one. */
  public List<CellRangeAddress> merged() {
    return merged;
  }

  /** Begins a new page below a line. */
  public void breakBelow(int line) {
    breaks.add(line);
  }

  public boolean isBrokenBelow(int line) {
    return breaks.contains(line);
  }

  /** The lines below which a new page begins. */
  public List<Integer> breaks() {
    return List.copyOf(breaks);
  }

  public void removeBreaks() {
    breaks.clear();
  }

  /** Keeps so many lines in sight above those that move. */
  public void freeze(int lines) {
    frozen = lines;
  }

  /** The cells on which something stands. */
  public void filled(int lastLine, int lastColumn) {
    filled = new CellRangeAddress(0, lastLine, 0, lastColumn);
  }

  /**
   * Makes a cell lead to others.
   *
   * @param tip is shown before somebody goes there
   */
  public void link(int line, int column, String cells, String tip) {
    hasLinks = true;
    String from = new CellReference(line, column).formatAsString();
    links.empty("hyperlink", "ref", from, "location", cells, "tooltip", tip);
  }

  /** Writes words in white where a condition holds. */
  public void whiteIf(CellRangeAddress cells, String condition) {
    coloredIf(cells, condition, WHITE);
  }

  /** Writes words in red where a condition holds. */
  public void redIf(CellRangeAddress cells, String condition) {
    coloredIf(cells, condition, DARK_RED);
  }

  private void coloredIf(CellRangeAddress cells, String condition, int color) {
    int look = styles.ofWords(color);
    conditions
        .open("conditionalFormatting", "sqref", cells.formatAsString())
        .open("cfRule", "type", "expression", "dxfId", look, "priority", ++rules)
        .leaf("formula", condition)
        .close("cfRule")
        .close("conditionalFormatting");
  }

  /**
   * Its part, up to its lines.
   *
   * @param isFirst whether it is the one that is seen when the workbook is opened
   */
  public String head(boolean isFirst) {
    XmlText xml = new XmlText().add(XmlText.HEAD);
    xml.open("worksheet", "xmlns", Ooxml.SHEETS, "xmlns:r", Ooxml.LINKS);
    xml.open("sheetPr").empty("pageSetUpPr", "fitToPage", printing.isFitted()).close("sheetPr");
    xml.empty("dimension", "ref", filled.formatAsString());
    xml.open("sheetViews")
        .open(
            "sheetView",
            "showGridLines",
            0,
            "tabSelected",
            isFirst ? 1 : null,
            "workbookViewId",
            0);
    if (frozen > 0) {
      String top = new CellReference(frozen, 0).formatAsString();
      xml.empty(
          "pane",
          "ySplit",
          frozen,
          "topLeftCell",
          top,
          "activePane",
          "bottomLeft",
          "state",
          "frozen");
      xml.empty("selection", "pane", "bottomLeft");
    }
    xml.close("sheetView").close("sheetViews");
    // drawings stand on lines of this height: no program is to choose another by its letters
    xml.empty("sheetFormatPr", "defaultRowHeight", LINE, "customHeight", 1);
    xml.open("cols");
    for (int column = 1; column <= widths.length; column++) {
      int width = widths[column - 1];
      xml.empty("col", "min", column, "max", column, "width", width, "customWidth", 1);
    }
    return xml.close("cols").open("sheetData").toString();
  }

  /**
   * Its part, from the end of its lines on.
   *
   * @param validations what its cells are held to, each as the part says it
   */
  public String tail(List<String> validations) {
    XmlText xml = new XmlText().close("sheetData");
    xml.empty(
        "sheetProtection", "sheet", 1, "formatColumns", 0, "formatRows", 0, "selectLockedCells", 0);
    if (!merged.isEmpty()) {
      xml.open("mergeCells", "count", merged.size());
      merged.forEach(cells -> xml.empty("mergeCell", "ref", cells.formatAsString()));
      xml.close("mergeCells");
    }
    xml.add(conditions.toString());
    if (!validations.isEmpty()) {
      xml.open("dataValidations", "count", validations.size());
      validations.forEach(xml::add);
      xml.close("dataValidations");
    }
    if (hasLinks) {
      xml.open("hyperlinks").add(links.toString()).close("hyperlinks");
    }
    printing.writeTo(xml);
    if (!breaks.isEmpty()) {
      xml.open("rowBreaks", "count", breaks.size(), "manualBreakCount", breaks.size());
      breaks.forEach(line -> xml.empty("brk", "id", line + 1, "max", LAST_COLUMN, "man", 1));
      xml.close("rowBreaks");
    }
    if (!layer.isEmpty()) {
      xml.empty("drawing", "r:id", FilePart.link(1));
    }
    return xml.close("worksheet").toString();
  }
}
