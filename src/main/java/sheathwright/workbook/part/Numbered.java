package sheathwright.workbook.part;

import java.util.LinkedHashMap;
import java.util.Map;

/** Elements of a list, each written once and pointed at by its number. */
final class Numbered {

  private final String list;
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  Numbered(String list) {
    this.list = list;
  }

  /** The number of an element, from 0; a new one is added. */
  int numberOf(String element) {
    Integer known = numbers.putIfAbsent(element, numbers.size());
    return known == null ? numbers.size() - 1 : known;
  }

  /** Writes the list, if anything is in it. */
  void writeTo(XmlText xml) {
    if (!numbers.isEmpty()) {
      xml.open(list, "count", numbers.size());
      numbers.keySet().forEach(xml::add);
      xml.close(list);
    }
  }
}
