package sheathwright.workbook.part;

import org.apache.poi.ss.util.CellRangeAddress;

/** How a sheet is printed, on letter paper (ECMA-376, 18.3.1.63 and before). */
public final class Printing {

  /** Letter paper, 8 1/2 by 11 in. */
  private static final int LETTER = 1;

  /** Between the edge of the paper and what stands above or below the page, in inches. */
  private static final double EDGE = 0.3;

  private double side;
  private double top;
  private double bottom;
  private boolean isFitted = true;
  private int wide = 1;
  private int high = 1;
  private int percent;
  private boolean isUpright = true;
  private String footer = "";
  private CellRangeAddress area;
  private CellRangeAddress repeated;

  /** So far from the edges of the paper, in inches. */
  public void margins(double atTheSides, double atTheTop, double atTheBottom) {
    side = atTheSides;
    top = atTheTop;
    bottom = atTheBottom;
  }

  /** Shrunk to so many pages beside and below each other; any number, if 0. */
  public void fit(int pagesAcross, int pagesDown) {
    wide = pagesAcross;
    high = pagesDown;
  }

  /** In a size of its own, whatever pages it takes. */
  public void at(int size) {
    isFitted = false;
    percent = size;
  }

  boolean isFitted() {
    return isFitted;
  }

  public void upright(boolean isSo) {
    isUpright = isSo;
  }

  /**
   * Words below each page.
   *
   * @param atTheLeft and at the right, with the codes that stand for numbers of pages and sizes of
   *     letters (ECMA-376, 18.3.1.39)
   */
  public void footer(String atTheLeft, String atTheRight) {
    footer = "&L" + atTheLeft + "&R" + atTheRight;
  }

  /** The cells that are printed. */
  public void area(CellRangeAddress cells) {
    area = cells;
  }

  /** Lines that are printed again at the top of each page. */
  public void repeat(int first, int last) {
    repeated = new CellRangeAddress(first, last, -1, -1);
  }

  /**
   * What the workbook's part says of it.
   *
   * @param sheet the sheet's name
   * @param number its number among all sheets, from 0
   */
  void writeNames(XmlText xml, String sheet, int number) {
    name(xml, "_xlnm.Print_Titles", number, repeated, sheet);
    name(xml, "_xlnm.Print_Area", number, area, sheet);
  }

  private static void name(
      XmlText xml, String name, int number, CellRangeAddress cells, String sheet) {
    if (cells != null) {
      xml.open("definedName", "name", name, "localSheetId", number);
      xml.words(cells.formatAsString(sheet, true)).close("definedName");
    }
  }

  /** What the sheet's part says of it. */
  void writeTo(XmlText xml) {
    xml.empty("printOptions", "horizontalCentered", 1);
    xml.begin("pageMargins")
        .with("left", side)
        .with("right", side)
        .with("top", top)
        .with("bottom", bottom)
        .with("header", EDGE)
        .with("footer", EDGE)
        .closed();
    xml.begin("pageSetup")
        .with("paperSize", LETTER)
        .with("scale", percent == 0 ? null : percent)
        .with("fitToWidth", wide)
        .with("fitToHeight", high)
        .with("orientation", isUpright ? "portrait" : "landscape")
        .closed();
    xml.open("headerFooter").leaf("oddFooter", footer).close("headerFooter");
  }
}
