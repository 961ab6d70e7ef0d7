package sheathwright.workbook.letterhead;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import sheathwright.figure.Shown;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.part.Ooxml;

/** A part of a workbook's file as a tree that is written again with all that was in it. */
final class Xml {

  /** What the elements of sheets, styles and texts belong to (ECMA-376, part 1, annex A). */
  static final String MAIN = Ooxml.SHEETS;

  /** What points at another part. */
  static final String RELATIONS = Ooxml.LINKS;

  /**
   * A tree takes some twenty times the room of its text; no letterhead's sheet is a tenth of it.
   */
  private static final int MOST_BYTES = 8_000_000;

  private static final String MOST_DEPTH = "200";

  private Xml() {}

  /**
   * The outermost element of a part.
   *
   * @param file for messages
   * @throws ProblemsException if the part is broken or declares entities of its own
   */
  static Element root(String file, byte[] part) {
    if (part.length > MOST_BYTES) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  file,
                  0,
                  "",
                  Shown.text(
                      "one of its parts is longer than %,d bytes, the most that is read of a letterhead",
                      MOST_BYTES))));
    }
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setAttribute("jdk.xml.maxElementDepth", MOST_DEPTH);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new ByteArrayInputStream(part)).getDocumentElement();
    } catch (SAXException | IOException broken) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  file,
                  0,
                  "",
                  "it is damaged, or declares entities of its own; save it anew as .xlsx")));
    } catch (ParserConfigurationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** A part as it is packed. */
  static byte[] bytes(Element root) {
    try {
      Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
      Document whole = root.getOwnerDocument();
      whole.setXmlStandalone(true);
      writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      writer.transform(new DOMSource(whole), new StreamResult(bytes));
      return bytes.toByteArray();
    } catch (TransformerException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The elements of a name directly in another, in whatever namespace. */
  static List<Element> children(Element parent, String name) {
    List<Element> found = new ArrayList<>();
    for (Element each : children(parent)) {
      if (each.getLocalName().equals(name)) {
        found.add(each);
      }
    }
    return found;
  }

  /** All elements directly in another. */
  static List<Element> children(Element parent) {
    List<Element> found = new ArrayList<>();
    for (Node at = parent.getFirstChild(); at != null; at = at.getNextSibling()) {
      if (at instanceof Element element) {
        found.add(element);
      }
    }
    return found;
  }

  /** The first of a name directly in another. */
  static Optional<Element> child(Element parent, String name) {
    return children(parent, name).stream().findFirst();
  }

  /** All of a name anywhere in another, in whatever namespace. */
  static List<Element> all(Element parent, String name) {
    List<Element> found = new ArrayList<>();
    var nodes = parent.getElementsByTagNameNS("*", name);
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  /** A new element of the spreadsheet's own, named as its neighbors are. */
  static Element made(Element neighbor, String name) {
    String prefix = neighbor.getPrefix();
    return neighbor
        .getOwnerDocument()
        .createElementNS(MAIN, prefix == null ? name : prefix + ":" + name);
  }

  /** A part's section; made in its place, if there is none. */
  static Element section(Element root, String name, List<String> order) {
    return child(root, name)
        .orElseGet(
            () -> {
              Element made = made(root, name);
              List<String> later = order.subList(order.indexOf(name) + 1, order.size());
              Node before =
                  children(root).stream()
                      .filter(each -> later.contains(each.getLocalName()))
                      .findFirst()
                      .orElse(null);
              root.insertBefore(made, before);
              return made;
            });
  }

  /** A number in an attribute; 0, if there is none. */
  static int number(Element element, String attribute) {
    String text = element.getAttribute(attribute);
    return text.isEmpty() ? 0 : Integer.parseInt(text);
  }
}
