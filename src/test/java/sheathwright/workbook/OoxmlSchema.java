package sheathwright.workbook;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.drawingml.x2006.main.ThemeDocument;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTDrawing;
import org.openxmlformats.schemas.officeDocument.x2006.extendedProperties.PropertiesDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** A workbook's parts against the schemas of ECMA-376 that POI brings along. */
final class OoxmlSchema {

  /** The element that POI's schemas leave out, which stands behind the cells' looks. */
  static final String NAMED_LOOKS = "<cellStyles .*</cellStyles>";

  /** XML's own word for spaces that are meant; the schema forgets it, its text asks for it. */
  private static final String SPACES_ARE_MEANT = " xml:space=\"preserve\"";

  /** What each kind of part must be; the first that the part's name matches counts. */
  private static final Map<String, Reader> KINDS = new LinkedHashMap<>();

  static {
    KINDS.put("xl/workbook\\.xml", WorkbookDocument.Factory::parse);
    KINDS.put("xl/worksheets/sheet\\d+\\.xml", WorksheetDocument.Factory::parse);
    KINDS.put("xl/styles\\.xml", StyleSheetDocument.Factory::parse);
    KINDS.put("xl/sharedStrings\\.xml", SstDocument.Factory::parse);
    KINDS.put("xl/theme/theme\\d+\\.xml", ThemeDocument.Factory::parse);
    KINDS.put("xl/drawings/drawing\\d+\\.xml", OoxmlSchema::drawing);
    KINDS.put("xl/charts/chart\\d+\\.xml", ChartSpaceDocument.Factory::parse);
    KINDS.put("docProps/app\\.xml", PropertiesDocument.Factory::parse);
  }

  private OoxmlSchema() {}

  /** Reads a part as what it must be. */
  @FunctionalInterface
  private interface Reader {
    XmlObject read(ByteArrayInputStream part) throws XmlException, IOException;
  }

  private static XmlObject drawing(ByteArrayInputStream part) throws XmlException, IOException {
    return CTDrawing.Factory.parse(part, new XmlOptions().setLoadReplaceDocumentElement(null));
  }

  /** Whether there is a schema for a part of that name. */
  static boolean knows(String part) {
    return KINDS.keySet().stream().anyMatch(part::matches);
  }

  /** What is wrong with a part; nothing, where there is no schema for it. */
  static List<String> faults(String part, String text) {
    List<String> faults = new ArrayList<>();
    KINDS.entrySet().stream()
        .filter(kind -> part.matches(kind.getKey()))
        .forEach(kind -> faults.addAll(faults(kind.getValue(), text)));
    return faults;
  }

  private static List<String> faults(Reader reader, String text) {
    String known = text.replaceFirst(NAMED_LOOKS, "").replace(SPACES_ARE_MEANT, "");
    List<XmlError> errors = new ArrayList<>();
    try {
      reader
          .read(new ByteArrayInputStream(known.getBytes(ISO_8859_1)))
          .validate(new XmlOptions().setErrorListener(errors));
    } catch (XmlException malformed) {
      return List.of(malformed.getMessage());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return errors.stream().map(XmlError::toString).toList();
  }
}
