package sheathwright.workbook.part;

import java.util.List;

/**
 * Cells that a chart is drawn from, with what they hold as the file is written.
 *
 * @param cells as a formula points at them
 * @param values one for each
 */
public record ChartCells(String cells, List<String> values) {

  /** As a chart's part points at words, or at numbers (ECMA-376, 21.2.2.201 and 21.2.2.123). */
  void writeTo(XmlText xml, String kind) {
    xml.open("c:" + kind + "Ref").leaf("c:f", cells).open("c:" + kind + "Cache");
    xml.empty("c:ptCount", "val", values.size());
    for (int i = 0; i < values.size(); i++) {
      xml.open("c:pt", "idx", i).leaf("c:v", values.get(i)).close("c:pt");
    }
    xml.close("c:" + kind + "Cache").close("c:" + kind + "Ref");
  }
}
