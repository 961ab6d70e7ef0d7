package sheathwright.workbook.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import sheathwright.workbook.part.XmlText;

/** The names of cells and ranges, as the workbook's part holds them (ECMA-376, 18.2.5). */
final class DefinedNames {

  private final Map<String, String> names = new LinkedHashMap<>();

  /** Gives a cell or a range a name, which must be legal and not yet taken. */
  void define(String name, String formula) {
    String before = names.putIfAbsent(name, formula);
    if (before != null) {
      throw new IllegalStateException(name + " stands for " + before + " already");
    }
  }

  /** Hands over each name and what it stands for. */
  void each(BiConsumer<String, String> into) {
    names.forEach(into);
  }

  CharSequence xml() {
    StringBuilder xml = new StringBuilder();
    names.forEach(
        (name, formula) -> {
          xml.append("<definedName name=\"").append(name).append("\">");
          XmlText.append(xml, formula);
          xml.append("</definedName>");
        });
    return xml;
  }
}
