package sheathwright.workbook.book;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;

/**
 * What a workbook's file says, read as plain XML in one pass: an engine needs ten times as long to
 * open it, and nothing is recalculated here.
 *
 * @param values the value that each formula cell holds, by address
 * @param formulas the text of each formula
 * @param names every name with the cells that it stands for, in order
 * @param texts each cell that holds a text
 */
record WrittenFile(
    Map<String, Object> values,
    Map<String, String> formulas,
    Map<String, List<String>> names,
    Map<String, String> texts) {

  static WrittenFile of(byte[] file) {
    try {
      Map<String, byte[]> parts = parts(file);
      WrittenFile read =
          new WrittenFile(
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>(),
              new LinkedHashMap<>());
      List<String> shared = sharedTexts(parts.get("xl/sharedStrings.xml"));
      Map<String, String> targets = targets(parts.get("xl/_rels/workbook.xml.rels"));
      XMLStreamReader book = reader(parts.get("xl/workbook.xml"));
      while (book.hasNext()) {
        if (!isStart(book, "sheet") && !isStart(book, "definedName")) {
          book.next();
        } else if (book.getLocalName().equals("sheet")) {
          String part = targets.get(attribute(book, "id"));
          String path = part.startsWith("/") ? part.substring(1) : "xl/" + part;
          read.tab(attribute(book, "name"), parts.get(path), shared);
          book.next();
        } else {
          String name = attribute(book, "name");
          String range = book.getElementText();
          if (!name.startsWith("_")) {
            read.names.put(name, cells(range));
          }
        }
      }
      return read;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (XMLStreamException broken) {
      throw new IllegalStateException(broken);
    }
  }

  /** The values, but for the cells that say whether the file is as it was written. */
  Map<String, Object> comparable() {
    return withoutStates(values);
  }

  /** Values of this file's cells, however they were come by, without the same cells. */
  Map<String, Object> withoutStates(Map<String, Object> all) {
    Map<String, Object> rest = new LinkedHashMap<>(all);
    names.forEach(
        (name, cells) -> {
          if (name.startsWith("state_of_")) {
            rest.keySet().removeAll(Set.copyOf(cells));
          }
        });
    return rest;
  }

  /** The cells behind those labels of a tab's first column that stand there once. */
  Map<String, String> labeled(String tab) {
    Map<String, String> cells = new LinkedHashMap<>();
    Set<String> twice = new HashSet<>();
    texts.forEach(
        (address, text) -> {
          if (address.matches(tab + "!A\\d+")
              && cells.put(text, address.replace("!A", "!B")) != null) {
            twice.add(text);
          }
        });
    cells.keySet().removeAll(twice);
    return cells;
  }

  private void tab(String tab, byte[] part, List<String> shared) throws XMLStreamException {
    XMLStreamReader sheet = reader(part);
    String address = "";
    String type = "";
    while (sheet.hasNext()) {
      sheet.next();
      if (isStart(sheet, "c")) {
        address = tab + "!" + attribute(sheet, "r");
        type = attribute(sheet, "t");
      } else if (isStart(sheet, "f")) {
        formulas.put(address, sheet.getElementText());
        values.put(address, 0.0); // unless a value is written beside it
      } else if (isStart(sheet, "v") && formulas.containsKey(address)) {
        values.put(address, value(type, sheet.getElementText()));
      } else if (isStart(sheet, "v") && type.equals("s")) {
        texts.put(address, shared.get(Integer.parseInt(sheet.getElementText())));
      } else if (isStart(sheet, "t")) {
        texts.merge(address, sheet.getElementText(), String::concat);
      }
    }
  }

  private static Object value(String type, String text) {
    return switch (type) {
      case "", "n" -> Double.valueOf(text);
      case "str" -> text;
      case "b" -> text.equals("1");
      case "e" -> "#error";
      default -> throw new IllegalStateException("a formula's value is of type " + type);
    };
  }

  private static List<String> sharedTexts(byte[] part) throws XMLStreamException {
    List<String> texts = new ArrayList<>();
    if (part == null) {
      return texts;
    }
    XMLStreamReader reader = reader(part);
    while (reader.hasNext()) {
      reader.next();
      if (isStart(reader, "si")) {
        texts.add("");
      } else if (isStart(reader, "t")) {
        texts.add(texts.remove(texts.size() - 1) + reader.getElementText());
      }
    }
    return texts;
  }

  /** Where the parts of a workbook lie, by the key that the workbook has for them. */
  private static Map<String, String> targets(byte[] part) throws XMLStreamException {
    Map<String, String> targets = new HashMap<>();
    XMLStreamReader reader = reader(part);
    while (reader.hasNext()) {
      reader.next();
      if (isStart(reader, "Relationship")) {
        targets.put(attribute(reader, "Id"), attribute(reader, "Target"));
      }
    }
    return targets;
  }

  private static List<String> cells(String range) {
    List<String> cells = new ArrayList<>();
    for (CellReference each :
        new AreaReference(range, SpreadsheetVersion.EXCEL2007).getAllReferencedCells()) {
      cells.add(
          each.getSheetName()
              + "!"
              + new CellReference(each.getRow(), each.getCol(), false, false).formatAsString());
    }
    return cells;
  }

  private static Map<String, byte[]> parts(byte[] file) throws IOException {
    Map<String, byte[]> parts = new HashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().startsWith("xl/")) {
          parts.put(entry.getName(), zip.readAllBytes());
        }
      }
    }
    return parts;
  }

  private static XMLStreamReader reader(byte[] part) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    return factory.createXMLStreamReader(new ByteArrayInputStream(part));
  }

  private static boolean isStart(XMLStreamReader reader, String element) {
    return reader.isStartElement() && reader.getLocalName().equals(element);
  }

  /** An attribute by its name, whatever its namespace; empty if there is none. */
  private static String attribute(XMLStreamReader reader, String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return reader.getAttributeValue(i);
      }
    }
    return "";
  }
}
