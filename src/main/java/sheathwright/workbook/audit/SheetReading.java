package sheathwright.workbook.audit;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.util.CellAddress;
import sheathwright.job.file.CellCount;

/** The part of one tab, read once from its beginning to its end (ECMA-376, 18.3.1). */
final class SheetReading {

  private static final int MOST_ROWS = 1_048_576;
  private static final int MOST_COLUMNS = 16_384;

  private final XMLStreamReader xml;
  private final Pane pane;
  private final List<String> texts;
  private final BitSet open;
  private final CellCount count;
  private final Map<String, Shared> shared = new HashMap<>();
  private int row = -1;
  private int column = -1;
  private int columnsTold; // each column is told once, from left to right (18.3.1.17)

  /** A formula that other cells take over. */
  private record Shared(String formula, int row, int column) {}

  private SheetReading(
      XMLStreamReader xml, Pane pane, List<String> texts, BitSet open, CellCount count) {
    this.count = count;
    this.xml = xml;
    this.pane = pane;
    this.texts = texts;
    this.open = open;
  }

  /**
   * Reads a tab.
   *
   * @param texts that cells share
   * @param open which styles are not locked
   * @param count of the cells of the whole workbook
   */
  static void read(XMLStreamReader xml, Pane pane, List<String> texts, BitSet open, CellCount count)
      throws XMLStreamException {
    new SheetReading(xml, pane, texts, open, count).read();
  }

  private void read() throws XMLStreamException {
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "row" -> row();
        case "c" -> cell();
        case "col" -> hiddenColumns();
        case "sheetProtection" -> {
          if (isSet("sheet")) {
            pane.protect();
          }
        }
        case "dataValidation" -> pane.rules().add(rule(xml));
        default -> {}
      }
    }
  }

  private boolean isSet(String attribute) {
    String value = xml.getAttributeValue(null, attribute);
    return "1".equals(value) || "true".equals(value);
  }

  private boolean isNought(String attribute) {
    String value = xml.getAttributeValue(null, attribute);
    return value != null && Double.parseDouble(value) == 0;
  }

  private void row() {
    String number = xml.getAttributeValue(null, "r");
    row = number == null ? row + 1 : Integer.parseInt(number) - 1;
    column = -1;
    if (row < 0 || row >= MOST_ROWS) {
      throw new IllegalArgumentException("row " + number);
    }
    if (isSet("hidden") || isNought("ht")) {
      pane.hiddenRows().add(row);
    }
  }

  private void hiddenColumns() {
    if (isSet("hidden") || isNought("width")) {
      int last = Math.min(Integer.parseInt(xml.getAttributeValue(null, "max")), MOST_COLUMNS);
      int first = Integer.parseInt(xml.getAttributeValue(null, "min"));
      for (int i = Math.max(first, columnsTold + 1); i <= last; i++) {
        pane.hiddenColumns().add(i - 1);
      }
      columnsTold = Math.max(columnsTold, last);
    }
  }

  private void cell() throws XMLStreamException {
    String address = xml.getAttributeValue(null, "r");
    if (address == null) {
      column++;
    } else {
      CellAddress at = new CellAddress(address);
      row = at.getRow();
      column = at.getColumn();
    }
    if (row < 0 || row >= MOST_ROWS || column < 0 || column >= MOST_COLUMNS) {
      throw new IllegalArgumentException("cell " + address);
    }
    String type = xml.getAttributeValue(null, "t");
    String style = xml.getAttributeValue(null, "s");
    boolean isOpen = open.get(style == null ? 0 : Integer.parseInt(style));
    String formula = "";
    StringBuilder value = new StringBuilder();
    int depth = 1;
    while (depth > 0) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "f" -> formula = formula();
          case "v", "t" -> value.append(xml.getElementText());
          case "rPh" -> xml.getElementText();
          default -> depth++;
        }
      }
    }
    Held held = held(type == null ? "n" : type, formula, value.toString(), isOpen);
    if (!held.isEmpty() || isOpen) {
      count.add(0);
      pane.put(row, column, held);
    }
  }

  private String formula() throws XMLStreamException {
    String type = xml.getAttributeValue(null, "t");
    String number = xml.getAttributeValue(null, "si");
    String text = xml.getElementText();
    if (!"shared".equals(type)) {
      return text;
    }
    if (!text.isEmpty()) {
      shared.put(number, new Shared(text, row, column));
      return text;
    }
    Shared first = shared.get(number);
    if (first == null) {
      return "#REF!";
    }
    count.add(first.formula().length());
    return References.shifted(first.formula(), row - first.row(), column - first.column());
  }

  private Held held(String type, String formula, String value, boolean isOpen) {
    return switch (type) {
      case "s" ->
          new Held(Held.Type.TEXT, formula, texts.get(Integer.parseInt(value)), isOpen, false);
      case "b" -> new Held(Held.Type.TRUTH, formula, value, isOpen, false);
      case "e" -> new Held(Held.Type.ERROR, formula, formula.isEmpty() ? value : "", isOpen, false);
      case "n" ->
          new Held(
              value.isBlank() ? Held.Type.TEXT : Held.Type.NUMBER,
              formula,
              value.isBlank() ? "" : Double.toString(Double.parseDouble(value)),
              isOpen,
              false);
      default -> new Held(Held.Type.TEXT, formula, value, isOpen, false);
    };
  }

  /** What some cells are held to (18.3.1.32). */
  static Pane.Rule rule(XMLStreamReader xml) throws XMLStreamException {
    String cells = xml.getAttributeValue(null, "sqref");
    String type = xml.getAttributeValue(null, "type");
    String first = "";
    String second = "";
    while (xml.next() != XMLStreamConstants.END_ELEMENT
        || !xml.getLocalName().equals("dataValidation")) {
      if (xml.isStartElement()) {
        if (xml.getLocalName().equals("formula1")) {
          first = xml.getElementText();
        } else if (xml.getLocalName().equals("formula2")) {
          second = xml.getElementText();
        }
      }
    }
    return new Pane.Rule(cells == null ? "" : cells, type == null ? "" : type, first, second);
  }
}
