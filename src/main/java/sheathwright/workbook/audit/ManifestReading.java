package sheathwright.workbook.audit;

import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.util.CellAddress;
import sheathwright.job.file.Manifest;

/** A workbook as its manifest tells it. */
final class ManifestReading {

  private ManifestReading() {}

  /** What it tells; nothing if it is broken. */
  static Optional<Reading> of(byte[] xml) {
    try {
      return Optional.of(read(Manifest.reader(xml)));
    } catch (XMLStreamException | RuntimeException broken) {
      return Optional.empty();
    }
  }

  private static Reading read(XMLStreamReader xml) throws XMLStreamException {
    xml.nextTag();
    Reading reading =
        new Reading(Optional.of("office".equals(xml.getAttributeValue(null, "reader"))));
    Pane pane = null;
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (xml.getLocalName()) {
        case "name" -> {
          String name = xml.getAttributeValue(null, "n");
          reading.names().put(name, xml.getElementText());
        }
        case "sheet" -> {
          pane = new Pane(xml.getAttributeValue(null, "n"));
          pane.protect();
          if ("true".equals(xml.getAttributeValue(null, "open"))) {
            pane.open();
          }
          reading.panes().put(pane.name(), pane);
        }
        case "dataValidation" -> pane.rules().add(SheetReading.rule(xml));
        default -> cell(xml, pane);
      }
    }
    return reading;
  }

  private static void cell(XMLStreamReader xml, Pane pane) throws XMLStreamException {
    Held.Type type =
        switch (xml.getLocalName()) {
          case "n" -> Held.Type.NUMBER;
          case "e" -> Held.Type.ERROR;
          default -> Held.Type.TEXT;
        };
    CellAddress at = new CellAddress(xml.getAttributeValue(null, "r"));
    String formula = xml.getAttributeValue(null, "f");
    String kind = xml.getAttributeValue(null, "k");
    String text = xml.getElementText();
    pane.put(
        at.getRow(),
        at.getColumn(),
        new Held(
            type,
            formula == null ? "" : formula,
            type == Held.Type.NUMBER ? Double.toString(Double.parseDouble(text)) : text,
            "input".equals(kind),
            "solved".equals(kind)));
  }
}
