package sheathwright.workbook.book;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.util.CellReference;
import sheathwright.job.file.Manifest;
import sheathwright.workbook.part.FilePart;
import sheathwright.workbook.part.Ooxml;
import sheathwright.workbook.part.PartFile;
import sheathwright.workbook.part.XmlText;

/**
 * The part of a workbook's file that says what was written into it: each cell with its kind and its
 * formula or value, each name, and what inputs are held to. It says nothing that the cells do not
 * say. Programs that keep what they do not know keep it (custom XML data storage, ECMA-376, 15.2.5
 * and 22.5), so that a file that comes back can be held against it.
 */
final class ManifestPart {

  /** Told from other people's custom XML by this; any number that is nobody else's would do. */
  private static final String ITEM = "{5B0E7C14-3A6D-4F0B-9C21-7D8E4A61F3C2}";

  private static final String LINK = Ooxml.LINKS + "/customXml";
  private static final String PROPERTIES_XML =
      XmlText.HEAD
          + "<ds:datastoreItem ds:itemID=\"%s\" xmlns:ds=\"http://schemas.openxmlformats.org/officeDocument/2006/customXml\"><ds:schemaRefs><ds:schemaRef ds:uri=\"%s\"/></ds:schemaRefs></ds:datastoreItem>"
              .formatted(ITEM, Manifest.NAMESPACE);

  /**
   * It is as long as all sheets together: one of 784 kB becomes 155 kB in 8 ms, 146 kB in 17 ms at
   * the usual 6, and 178 kB in 5 ms at 1.
   */
  private static final int LEVEL = 4;

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

  /**
   * Adds it to a workbook's file.
   *
   * @param open tabs below whose lines more are written one by one, of which it says nothing
   */
  void addTo(PartFile file, FilePart workbook, Set<Tab> open) {
    FilePart manifest = file.add(Manifest.PART, Ooxml.XML, out -> write(out, open));
    FilePart properties =
        file.add("customXml/itemProps1.xml", Ooxml.STORED_XML, FilePart.Content.of(PROPERTIES_XML));
    manifest.level(LEVEL);
    workbook.link(LINK, manifest);
    manifest.link(LINK + "Props", properties);
  }

  private void write(OutputStream out, Set<Tab> open) throws IOException {
    xml.append(XmlText.HEAD).append("<manifest xmlns=\"").append(Manifest.NAMESPACE);
    xml.append("\" reader=\"").append(isOffice ? "office" : "homeowner").append("\">\n");
    names.each((name, formula) -> element("name", name, formula));
    for (Tab tab : tabs) {
      xml.append("<sheet");
      attribute("n", tab.name());
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
          cell != null && (cell.kind() != TabCell.Kind.EMPTY || !cell.style().isLocked());
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
      attribute("f", cell.formula());
    } else if (!cell.style().isLocked()) {
      xml.append(" k=\"input\"");
    } else if (solved.contains(new Place(tab.name(), row, column, "").absolute())) {
      xml.append(" k=\"solved\"");
    }
    xml.append('>');
    switch (cell.kind()) {
      case NUMBER -> XmlText.append(xml, cell.number());
      case TEXT -> XmlText.append(xml, cell.text());
      case REFUSED, EMPTY -> {}
    }
    xml.append("</").append(tag).append('>');
  }

  private void element(String tag, String name, String text) {
    xml.append('<').append(tag).append(" n=\"").append(name).append("\">");
    XmlText.append(xml, text);
    xml.append("</").append(tag).append(">\n");
  }

  private void attribute(String name, String value) {
    xml.append(' ').append(name).append("=\"");
    XmlText.appendAttribute(xml, value);
    xml.append('"');
  }
}
