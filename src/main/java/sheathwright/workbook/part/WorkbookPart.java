package sheathwright.workbook.part;

import java.util.List;

/** The part that lists a workbook's sheets and the names of its cells (ECMA-376, 18.2). */
public final class WorkbookPart {

  private WorkbookPart() {}

  /**
   * The whole part.
   *
   * @param links that point at the sheets' parts
   * @param names of cells, as elements
   */
  public static String text(List<Sheet> sheets, List<String> links, CharSequence names) {
    XmlText xml = new XmlText().add(XmlText.HEAD);
    xml.open("workbook", "xmlns", Ooxml.SHEETS, "xmlns:r", Ooxml.LINKS);
    xml.empty("workbookPr", "date1904", 0);
    xml.open("bookViews").empty("workbookView", "activeTab", 0).close("bookViews");
    xml.open("sheets");
    for (int i = 0; i < sheets.size(); i++) {
      xml.empty("sheet", "name", sheets.get(i).name(), "sheetId", i + 1, "r:id", links.get(i));
    }
    xml.close("sheets").open("definedNames");
    for (int i = 0; i < sheets.size(); i++) {
      sheets.get(i).printing().writeNames(xml, sheets.get(i).name(), i);
    }
    return xml.add(names).close("definedNames").close("workbook").toString();
  }
}
