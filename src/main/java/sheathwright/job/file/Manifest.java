package sheathwright.job.file;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import sheathwright.job.table.ProblemsException;

/**
 * What a workbook of ours carries to say what was written into it, and its SHA-256: the same
 * wherever only ends of lines, blanks between elements, the order of attributes, prefixes or the
 * way in which a character is escaped differ, as they do once another program has saved it.
 */
public final class Manifest {

  /** What its elements belong to. */
  public static final String NAMESPACE = "urn:sheathwright:manifest:1";

  /** What the cell is called that says which document a workbook is. */
  public static final String DOCUMENT = "document_number";

  private static final String FOLDER = "customXml/";

  /** Where it lies in a file of ours; another program may lay it elsewhere among custom XML. */
  public static final String PART = FOLDER + "item1.xml";

  private Manifest() {}

  /** A reader of XML that looks nothing up outside and follows no entity. */
  public static XMLStreamReader reader(byte[] xml) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory.createXMLStreamReader(new ByteArrayInputStream(xml));
  }

  /** The manifest in a workbook's file, if it has one that can be read. */
  public static Optional<byte[]> in(byte[] workbook) {
    try {
      return Unpacked.parts("", workbook, Manifest::mayBe).values().stream()
          .filter(Manifest::isOurs)
          .findFirst();
    } catch (ProblemsException unreadable) {
      return Optional.empty(); // what is no workbook has none
    }
  }

  /** Whether an entry of a packed file could be it. */
  public static boolean mayBe(String entry) {
    return entry.startsWith(FOLDER) && entry.endsWith(".xml");
  }

  /** Whether some XML is a manifest. */
  public static boolean isOurs(byte[] xml) {
    try {
      XMLStreamReader reader = reader(xml);
      reader.nextTag();
      return NAMESPACE.equals(reader.getNamespaceURI());
    } catch (XMLStreamException broken) {
      return false;
    }
  }

  /** The SHA-256 of a manifest in its canonical form; nothing if it is broken. */
  public static Optional<String> hash(byte[] xml) {
    try {
      String canonical = canonical(reader(xml));
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(canonical.getBytes(StandardCharsets.UTF_8));
      return Optional.of(HexFormat.of().formatHex(digest));
    } catch (XMLStreamException broken) {
      return Optional.empty();
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible); // every Java has it
    }
  }

  /** The SHA-256 of the manifest that a workbook carries; empty if it carries none. */
  public static String hashIn(byte[] workbook) {
    return in(workbook).flatMap(Manifest::hash).orElse("");
  }

  private static String canonical(XMLStreamReader reader) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    while (reader.hasNext()) {
      int event = reader.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        text.append('\u0002').append(reader.getLocalName());
        TreeMap<String, String> attributes = new TreeMap<>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
          attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
        }
        attributes.forEach((name, value) -> text.append('\u001f').append(name + "=" + value));
        text.append('\u001e');
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        text.append('\u0003');
      } else if (reader.isCharacters() && !reader.getText().isBlank()) {
        text.append(reader.getText().replace("\r\n", "\n").replace('\r', '\n'));
      }
    }
    return text.toString();
  }
}
