package sheathwright.workbook.part;

/**
 * What is said in a drawing's place.
 *
 * @param name that a spreadsheet program lists it by
 * @param title what it is, in a few words
 * @param description what can be seen on it
 */
public record Words(String name, String title, String description) {

  public Words {
    if (name.isBlank() || title.isBlank() || description.isBlank()) {
      throw new IllegalArgumentException("a drawing without words: " + name + title + description);
    }
  }

  /** Says it for the drawing of a number. */
  void writeTo(XmlText xml, long number) {
    xml.empty("xdr:cNvPr", "id", number, "name", name, "descr", description, "title", title);
  }
}
