package sheathwright.workbook.letterhead;

import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import org.apache.poi.ss.util.CellReference;
import org.w3c.dom.Element;

/**
 * A cell of a sheet.
 *
 * @param row from 0
 * @param column from 0
 */
record Cell(Element element, int row, int column) {

  /** All cells of a sheet, whether they say where they stand or not. */
  static List<Cell> of(Element sheet) {
    List<Cell> cells = new ArrayList<>();
    int row = -1;
    for (Element line : Xml.children(Xml.child(sheet, "sheetData").orElseThrow(), "row")) {
      row = line.hasAttribute("r") ? Xml.number(line, "r") - 1 : row + 1;
      int column = -1;
      for (Element each : Xml.children(line, "c")) {
        column =
            each.hasAttribute("r")
                ? new CellReference(each.getAttribute("r")).getCol()
                : column + 1;
        cells.add(new Cell(each, row, column));
      }
    }
    return cells;
  }

  /** As people call it: {@code B7}. */
  String address() {
    return CellReference.convertNumToColString(column) + (row + 1);
  }

  /** Takes out what it holds; its look stays. */
  void empty() {
    element.removeAttribute("t");
    Xml.children(element).stream()
        .filter(each -> List.of("f", "v", "is").contains(each.getLocalName()))
        .forEach(element::removeChild);
  }

  /** Puts a formula into it, and the result. */
  void calculate(String formula, String type, String value) {
    empty();
    Element written = Xml.made(element, "f");
    written.setTextContent(formula);
    element.insertBefore(written, element.getFirstChild());
    result(type, value);
  }

  /** Puts the result of the formula that it has into it; none, if the value is empty. */
  void result(String type, String value) {
    element.removeAttribute("t");
    Xml.child(element, "v").ifPresent(element::removeChild);
    if (value.isEmpty() && !type.equals("str")) {
      return;
    }
    if (!type.equals("n")) {
      element.setAttribute("t", type);
    }
    Element result = Xml.made(element, "v");
    result.setTextContent(value);
    Element formula = Xml.child(element, "f").orElseThrow();
    element.insertBefore(result, formula.getNextSibling());
  }

  /** Puts words into it. */
  void say(String words) {
    empty();
    if (words.isEmpty()) {
      return;
    }
    element.setAttribute("t", "inlineStr");
    Element held = Xml.made(element, "is");
    Element text = Xml.made(element, "t");
    text.setAttributeNS(XMLConstants.XML_NS_URI, "xml:space", "preserve");
    text.setTextContent(words);
    held.appendChild(text);
    element.insertBefore(held, element.getFirstChild());
  }
}
