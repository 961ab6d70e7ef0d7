package sheathwright.job.tab;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** One part's XML, read element by element; a part that declares entities is refused. */
final class PartReader {

  private static final XMLInputFactory XML = factory();

  private final String name;
  private final XMLStreamReader reader;

  /**
   * The XML of a part.
   *
   * @param name of the workbook, for messages
   */
  PartReader(String name, byte[] part) {
    this.name = name;
    try {
      this.reader = XML.createXMLStreamReader(new ByteArrayInputStream(part));
    } catch (XMLStreamException garbled) {
      throw damaged();
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, true);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  /** Goes to the next beginning or end of an element; false at the end of the part. */
  boolean next() {
    try {
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
          throw WorkbookParts.refused(name, "it declares entities of its own; save it anew");
        }
        if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
          return true;
        }
      }
      return false;
    } catch (XMLStreamException garbled) {
      throw damaged();
    }
  }

  /** Whether an element of this name begins here, in whatever namespace it stands. */
  boolean begins(String element) {
    return reader.isStartElement() && reader.getLocalName().equals(element);
  }

  /** Whether an element of this name ends here. */
  boolean ends(String element) {
    return reader.isEndElement() && reader.getLocalName().equals(element);
  }

  /** An attribute of the element that begins here, whatever its namespace. */
  Optional<String> attribute(String attribute) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(attribute)) {
        return Optional.of(reader.getAttributeValue(i));
      }
    }
    return Optional.empty();
  }

  /** The text of the element that begins here; it ends thereafter. */
  String text() {
    try {
      return reader.getElementText();
    } catch (XMLStreamException garbled) {
      throw damaged();
    }
  }

  private sheathwright.job.table.ProblemsException damaged() {
    return WorkbookParts.refused(
        name, "it is damaged, or declares entities of its own; save it anew");
  }
}
