package sheathwright.workbook.part;

/**
 * XML as it is written: elements with their attributes, and words made safe. Attributes are given
 * as names and values in turn; one without a value, which is null, is left out.
 */
public final class XmlText {

  public static final String HEAD =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  private final StringBuilder text = new StringBuilder();

  /** The begin of an element. */
  public XmlText open(String tag, Object... attributes) {
    return begun(tag, attributes).opened();
  }

  /** An element in which nothing stands. */
  public XmlText empty(String tag, Object... attributes) {
    return begun(tag, attributes).closed();
  }

  private XmlText begun(String tag, Object... attributes) {
    begin(tag);
    for (int i = 0; i < attributes.length; i += 2) {
      with((String) attributes[i], attributes[i + 1]);
    }
    return this;
  }

  /** An element whose attributes follow one by one. */
  public XmlText begin(String tag) {
    text.append('<').append(tag);
    return this;
  }

  /** One attribute of the element that was begun; none, if it has no value. */
  public XmlText with(String name, Object value) {
    if (value != null) {
      text.append(' ').append(name).append("=\"");
      if (value instanceof Double number) {
        append(text, number);
      } else {
        appendAttribute(text, value.toString());
      }
      text.append('"');
    }
    return this;
  }

  /** The element that was begun has all its attributes, and something stands in it. */
  public XmlText opened() {
    text.append('>');
    return this;
  }

  /** The element that was begun has all its attributes, and nothing stands in it. */
  public XmlText closed() {
    text.append("/>");
    return this;
  }

  /** The end of an element. */
  public XmlText close(String tag) {
    text.append("</").append(tag).append('>');
    return this;
  }

  /** An element in which only words stand. */
  public XmlText leaf(String tag, String words) {
    return open(tag).words(words).close(tag);
  }

  /** An element in which only a number stands. */
  public XmlText leaf(String tag, double number) {
    open(tag);
    append(text, number);
    return close(tag);
  }

  /** Words between the begin and the end of an element. */
  public XmlText words(String words) {
    append(text, words);
    return this;
  }

  /** What is XML already. */
  public XmlText add(CharSequence xml) {
    text.append(xml);
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }

  /** Appends a number, a whole one without a point. */
  public static void append(StringBuilder xml, double number) {
    long whole = (long) number;
    if (whole == number) {
      xml.append(whole);
    } else {
      xml.append(number);
    }
  }

  /** Appends words as XML holds them between tags. */
  public static void append(StringBuilder xml, String words) {
    int done = 0;
    for (int i = 0; i < words.length(); i++) {
      String written =
          switch (words.charAt(i)) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            default -> null;
          };
      if (written != null) {
        xml.append(words, done, i).append(written);
        done = i + 1;
      }
    }
    xml.append(words, done, words.length());
  }

  /** Appends words as XML holds them between double quotes. */
  public static void appendAttribute(StringBuilder xml, String words) {
    int begin = xml.length();
    append(xml, words);
    for (int i = begin; i < xml.length(); i++) {
      if (xml.charAt(i) == '"') {
        xml.replace(i, i + 1, "&quot;");
      } else if (xml.charAt(i) == '\n') {
        xml.replace(i, i + 1, "&#10;");
      }
    }
  }
}
