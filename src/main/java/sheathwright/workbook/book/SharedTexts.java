package sheathwright.workbook.book;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import sheathwright.workbook.part.Ooxml;
import sheathwright.workbook.part.XmlText;

/** The texts of a workbook's cells, each written once (ECMA-376, 18.4). */
final class SharedTexts {

  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private int uses;

  /** The number by which a cell refers to its text. */
  int numberOf(String text) {
    uses++;
    Integer known = numbers.putIfAbsent(text, numbers.size());
    return known == null ? numbers.size() - 1 : known;
  }

  void writeTo(OutputStream out) throws IOException {
    StringBuilder xml = new StringBuilder(XmlText.HEAD);
    xml.append("<sst xmlns=\"").append(Ooxml.SHEETS);
    xml.append("\" count=\"").append(uses);
    xml.append("\" uniqueCount=\"").append(numbers.size()).append("\">");
    for (String text : numbers.keySet()) {
      xml.append("<si>");
      SheetText.appendText(xml, text);
      xml.append("</si>");
    }
    xml.append("</sst>");
    out.write(xml.toString().getBytes(StandardCharsets.UTF_8));
  }
}
