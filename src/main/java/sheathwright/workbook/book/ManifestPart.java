package sheathwright.workbook.book;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.job.file.Manifest;

/**
 * The part of a workbook's file that says what was written into it: each cell with its kind and its
 * formula or value, each name, and what inputs are held to. It says nothing that the cells do not
 * say. Programs that keep what they do not know keep it (custom XML data storage, ECMA-376, 15.2.5
 * and 22.5), so that a file that comes back can be held against it.
 */
final class ManifestPart {

  /** Told from other people's custom XML by this; any number that is nobody else's would do. */
  private static final String ITEM = "{5B0E7C14-3A6D-4F0B-9C21-7D8E4A61F3C2}";

  private static final String RELATION =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml";
  private static final String PROPERTIES =
      "application/vnd.openxmlformats-officedocument.customXmlProperties+xml";
  private static final String PROPERTIES_XML =
      SheetText.XML_HEAD
          + "<ds:datastoreItem ds:itemID=\"%s\" xmlns:ds=\"http://schemas.openxmlformats.org/officeDocument/2006/customXml\"><ds:schemaRefs><ds:schemaRef ds:uri=\"%s\"/></ds:schemaRefs></ds:datastoreItem>"
              .formatted(ITEM, Manifest.NAMESPACE);

  private final boolean isOffice;
  private final DefinedNames names;
  private final List<Tab> tabs;
  private final Set<String> solved;
  private final StringBuilder xml = new StringBuilder();

  /**
   * The part of a book whose cells are all written.
   *
   * @param solved where numbers and words stand that a solver found, as formulas point at them
   */
  ManifestPart(boolean isOffice, DefinedNames names, List<Tab> tabs, Set<String> solved) {
    this.isOffice = isOffice;
    this.names = names;
    this.tabs = tabs;
    this.solved = solved;
  }

  /** The name of its entry in the packed file. */
  static String entry() {
    return Manifest.PART;
  }

  /** Makes room for it in the file, so that whoever writes the file knows of it. */
  static void announce(XSSFWorkbook workbook) {
    try {
      PackagePart part = part(workbook, "/" + Manifest.PART, "application/xml");
      written(part, SheetText.XML_HEAD); // what is empty is left out
      PackagePart properties = part(workbook, "/customXml/itemProps1.xml", PROPERTIES);
      written(properties, PROPERTIES_XML);
      workbook.getPackagePart().addRelationship(part.getPartName(), TargetMode.INTERNAL, RELATION);
      part.addRelationship(properties.getPartName(), TargetMode.INTERNAL, RELATION + "Props");
    } catch (InvalidFormatException | IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static PackagePart part(XSSFWorkbook workbook, String path, String kind)
      throws InvalidFormatException {
    PackagePartName name = PackagingURIHelper.createPartName(path);
    return workbook.getPackage().createPart(name, kind);
  }

  private static void written(PackagePart part, String text) throws IOException {
    try (OutputStream out = part.getOutputStream()) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  /**
   * Writes it.
   *
   * @param open tabs below whose lines more are written one by one, of which it says nothing
   */
  void write(OutputStream out, Set<Tab> open) throws IOException {
    xml.append(SheetText.XML_HEAD).append("<manifest xmlns=\"").append(Manifest.NAMESPACE);
    xml.append("\" reader=\"").append(isOffice ? "office" : "homeowner").append("\">\n");
    names.each((name, formula) -> element("name", name, formula));
    for (Tab tab : tabs) {
      xml.append("<sheet n=\"").append(attribute(tab.name())).append('"');
      xml.append(open.contains(tab) ? " open=\"true\">\n" : ">\n");
      List<TabLine> lines = tab.lines();
      for (int row = 0; row < lines.size(); row++) {
        if (lines.get(row) != null) {
          line(tab, row, lines.get(row).cells());
        }
      }
      tab.validations().forEach(xml::append);
      xml.append("</sheet>\n");
      out.write(xml.toString().getBytes(StandardCharsets.UTF_8));
      xml.setLength(0);
    }
    out.write("</manifest>\n".getBytes(StandardCharsets.UTF_8));
  }

  private void line(Tab tab, int row, List<TabCell> cells) {
    for (int column = 0; column < cells.size(); column++) {
      TabCell cell = cells.get(column);
      boolean isHeld =
          cell != null && (cell.kind() != TabCell.Kind.EMPTY || !cell.style().getLocked());
      if (isHeld) {
        cell(tab, row, column, cell);
      }
    }
    xml.append('\n');
  }

  private void cell(Tab tab, int row, int column, TabCell cell) {
    String tag =
        switch (cell.kind()) {
          case NUMBER -> "n";
          case REFUSED -> "e";
          case TEXT, EMPTY -> "t";
        };
    xml.append('<').append(tag).append(" r=\"");
    xml.append(CellReference.convertNumToColString(column)).append(row + 1).append('"');
    if (!cell.formula().isEmpty()) {
      xml.append(" f=\"").append(attribute(cell.formula())).append('"');
    } else if (!cell.style().getLocked()) {
      xml.append(" k=\"input\"");
    } else if (solved.contains(new Place(tab.name(), row, column, "").absolute())) {
      xml.append(" k=\"solved\"");
    }
    xml.append('>');
    switch (cell.kind()) {
      case NUMBER -> SheetText.append(xml, cell.number());
      case TEXT -> SheetText.append(xml, cell.text());
      case REFUSED, EMPTY -> {}
    }
    xml.append("</").append(tag).append('>');
  }

  private void element(String tag, String name, String text) {
    xml.append('<').append(tag).append(" n=\"").append(name).append("\">");
    SheetText.append(xml, text);
    xml.append("</").append(tag).append(">\n");
  }

  /** A text between double quotes. */
  private static String attribute(String text) {
    StringBuilder escaped = new StringBuilder();
    SheetText.append(escaped, text);
    return escaped.toString().replace("\"", "&quot;").replace("\n", "&#10;");
  }
}
