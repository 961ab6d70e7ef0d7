package sheathwright.workbook.letterhead;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;

/** The texts that cells share (ECMA-376, part 1, 18.4), and what a cell says. */
record Texts(List<String> shared) {

  /** Those of a part. */
  static Texts of(Element root) {
    List<String> texts = new ArrayList<>();
    Xml.children(root, "si").forEach(each -> texts.add(text(each)));
    return new Texts(texts);
  }

  /** What a cell's text is; empty where it holds a number, a formula or nothing. */
  String of(Cell cell) {
    Element element = cell.element();
    if (Xml.child(element, "f").isPresent()) {
      return "";
    }
    return switch (element.getAttribute("t")) {
      case "s" -> shared(value(element));
      case "inlineStr" -> Xml.child(element, "is").map(Texts::text).orElse("");
      case "str" -> value(element);
      default -> "";
    };
  }

  /**
   * A text by its number.
   *
   * @throws IllegalArgumentException if there is none of that number
   */
  private String shared(String number) {
    int place = Integer.parseInt(number);
    if (place < 0 || place >= shared.size()) {
      throw new IllegalArgumentException("there is no text " + number);
    }
    return shared.get(place);
  }

  /** The result that a cell holds, as it is written there. */
  static String value(Element cell) {
    return Xml.child(cell, "v").map(Element::getTextContent).orElse("");
  }

  /** Runs of letters one after the other, without what is said of their sound. */
  private static String text(Element texts) {
    StringBuilder text = new StringBuilder();
    for (Element each : Xml.children(texts)) {
      switch (each.getLocalName()) {
        case "t" -> text.append(each.getTextContent());
        case "r" -> text.append(text(each));
        default -> {}
      }
    }
    return text.toString();
  }
}
