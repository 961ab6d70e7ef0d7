package sheathwright.workbook.book;

/** The names of cells and ranges, as the workbook's part holds them (ECMA-376, 18.2.5). */
final class DefinedNames {

  private final StringBuilder xml = new StringBuilder();

  /** Gives a cell or a range a name, which must be legal and not yet taken. */
  void define(String name, String formula) {
    xml.append("<definedName name=\"").append(name).append("\">");
    SheetText.append(xml, formula);
    xml.append("</definedName>");
  }

  CharSequence xml() {
    return xml;
  }
}
