package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import sheathwright.job.file.CellCount;
import sheathwright.job.file.Manifest;
import sheathwright.job.table.ProblemsException;

/**
 * A workbook's file, read in one pass: nothing in it is worked out, followed or run (SpreadsheetML,
 * ECMA-376, part 1, 18).
 */
final class BookReading {

  /** Parts that no workbook of ours has, each with what it is. */
  private static final Map<String, String> FOREIGN =
      Map.ofEntries(
          Map.entry("vbaproject", "macros"),
          Map.entry("xl/macrosheets/", "macros"),
          Map.entry("xl/dialogsheets/", "macros"),
          Map.entry("xl/externallinks/", "links to other workbooks"),
          Map.entry("xl/connections", "connections to data elsewhere"),
          Map.entry("xl/querytables/", "connections to data elsewhere"),
          Map.entry("xl/embeddings/", "files packed inside"),
          Map.entry("xl/activex/", "controls"),
          Map.entry("xl/ctrlprops/", "controls"),
          Map.entry("xl/comments", "somebody's comments"),
          Map.entry("xl/threadedcomments/", "somebody's comments"),
          Map.entry("xl/persons/", "somebody's comments"));

  private final String name;
  private final Map<String, byte[]> parts;
  private final CellCount count;
  private final Reading reading = new Reading(Optional.empty());

  private BookReading(String name, Map<String, byte[]> parts) {
    this.name = name;
    this.parts = parts;
    count = new CellCount(name);
  }

  /**
   * Reads a file.
   *
   * @param name for messages
   * @throws sheathwright.job.table.ProblemsException if it is no workbook
   */
  static Reading of(String name, byte[] file) {
    BookReading book = new BookReading(name, PackedParts.of(name, file));
    try {
      book.read();
    } catch (ProblemsException tooMuch) {
      throw tooMuch;
    } catch (XMLStreamException | RuntimeException broken) {
      throw PackedParts.refused(
          name,
          "it is broken inside and cannot be read; open it in a spreadsheet program, save it as .xlsx, and try again");
    }
    return book.reading;
  }

  private void read() throws XMLStreamException {
    Map<String, String> targets = targets();
    List<String> texts = texts();
    BitSet open = openStyles();
    XMLStreamReader xml = Manifest.reader(parts.get("xl/workbook.xml"));
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      if (xml.getLocalName().equals("sheet")) {
        pane(xml, targets, texts, open);
      } else if (xml.getLocalName().equals("definedName")) {
        String named = xml.getAttributeValue(null, "name");
        String formula = xml.getElementText();
        if (!named.startsWith("_xl")) {
          reading.names().put(named, formula);
        }
      }
    }
    foreign();
  }

  private void pane(
      XMLStreamReader xml, Map<String, String> targets, List<String> texts, BitSet open)
      throws XMLStreamException {
    Pane pane = new Pane(xml.getAttributeValue(null, "name"));
    String state = xml.getAttributeValue(null, "state");
    if (state != null && !state.equals("visible")) {
      pane.hide();
    }
    String id = null;
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals("id") && xml.getAttributeNamespace(i) != null) {
        id = xml.getAttributeValue(i);
      }
    }
    byte[] part = parts.get(Optional.ofNullable(targets.remove(id)).orElse(""));
    if (part != null) {
      SheetReading.read(Manifest.reader(part), pane, texts, open, count);
    }
    reading.panes().put(pane.name(), pane);
  }

  private Map<String, String> targets() throws XMLStreamException {
    Map<String, String> targets = new HashMap<>();
    XMLStreamReader xml = Manifest.reader(parts.get("xl/_rels/workbook.xml.rels"));
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("Relationship")) {
        String target = xml.getAttributeValue(null, "Target");
        String path = target.startsWith("/") ? target.substring(1) : "xl/" + target;
        targets.put(xml.getAttributeValue(null, "Id"), path);
      }
    }
    return targets;
  }

  private List<String> texts() throws XMLStreamException {
    List<String> texts = new ArrayList<>();
    byte[] part = parts.get("xl/sharedStrings.xml");
    if (part == null) {
      return texts;
    }
    XMLStreamReader xml = Manifest.reader(part);
    StringBuilder text = new StringBuilder();
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "si" -> {
            text.setLength(0);
            count.add(0);
          }
          case "t" -> text.append(xml.getElementText());
          default -> {}
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("si")) {
        texts.add(text.toString());
      }
    }
    return texts;
  }

  /** Which of the styles of cells are not locked. */
  private BitSet openStyles() throws XMLStreamException {
    BitSet open = new BitSet();
    byte[] part = parts.get("xl/styles.xml");
    if (part == null) {
      return open;
    }
    XMLStreamReader xml = Manifest.reader(part);
    boolean isOfCells = false;
    int style = -1;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "cellXfs" -> isOfCells = true;
          case "xf" -> style += isOfCells ? 1 : 0;
          case "protection" -> {
            String locked = xml.getAttributeValue(null, "locked");
            boolean isOpen = "0".equals(locked) || "false".equals(locked);
            if (isOfCells && isOpen) {
              open.set(style);
            }
          }
          default -> {}
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("cellXfs")) {
        isOfCells = false;
      }
    }
    return open;
  }

  private void foreign() throws XMLStreamException {
    List<String> kinds = new ArrayList<>();
    for (Map.Entry<String, byte[]> part : parts.entrySet()) {
      String path = part.getKey().toLowerCase(java.util.Locale.ROOT);
      FOREIGN.forEach(
          (where, what) -> {
            if (path.contains(where) && !path.contains("/_rels/") && !kinds.contains(what)) {
              kinds.add(what);
            }
          });
      if (path.endsWith(".rels") && pointsOutside(part.getValue())) {
        kinds.add("a link to something outside, in " + part.getKey());
      }
    }
    for (String kind : kinds) {
      reading
          .foreign()
          .add(
              Finding.of(
                  Verdict.NOT_OPENED,
                  "other people's",
                  kind,
                  "no file of ours holds " + kind + "; they are not opened, and nothing is taken"));
    }
  }

  private static boolean pointsOutside(byte[] relations) throws XMLStreamException {
    XMLStreamReader xml = Manifest.reader(relations);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && "External".equals(xml.getAttributeValue(null, "TargetMode"))) {
        return true;
      }
    }
    return false;
  }
}
