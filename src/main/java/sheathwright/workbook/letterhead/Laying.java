package sheathwright.workbook.letterhead;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.w3c.dom.Element;
import sheathwright.workbook.letterhead.OfficeFile.Sheet;
import sheathwright.workbook.part.Ooxml;
import sheathwright.workbook.part.PartFile;

/**
 * Lays pictures upon cells, or upon what cells were made one: each as large as fits, in its own
 * shape.
 */
final class Laying {

  /**
   * The end of a sheet's part, from what points at its drawings on (ECMA-376, part 1, 18.3.1.99).
   */
  private static final List<String> ORDER =
      List.of(
          "drawing",
          "drawingHF",
          "legacyDrawing",
          "legacyDrawingHF",
          "picture",
          "oleObjects",
          "controls",
          "AlternateContent",
          "webPublishItems",
          "tableParts",
          "extLst");

  /** Numbers of shapes from here on are hardly taken by the office's own. */
  private static final int FIRST_SHAPE = 1_000_000;

  private static final String ANCHOR =
      "<xdr:oneCellAnchor xmlns:xdr=\"%s\" xmlns:a=\"%s\"><xdr:from><xdr:col>%s</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>%s</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx=\"%s\" cy=\"%s\"/>%s<xdr:clientData/></xdr:oneCellAnchor>";

  private static final String PICTURE =
      "<xdr:pic><xdr:nvPicPr><xdr:cNvPr id=\"0\" name=\"\"/><xdr:cNvPicPr><a:picLocks noChangeAspect=\"1\"/></xdr:cNvPicPr></xdr:nvPicPr><xdr:blipFill><a:blip xmlns:r=\"%s\"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x=\"0\" y=\"0\"/><a:ext cx=\"0\" cy=\"0\"/></a:xfrm><a:prstGeom prst=\"rect\"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic>";

  private final OfficeFile office;
  private final Ours ours;
  private final XSSFWorkbook measured;
  private int number;

  /**
   * Lays pictures upon the sheets of an office's workbook.
   *
   * @param measured the same, which knows how wide its columns are
   */
  Laying(OfficeFile office, Ours ours, XSSFWorkbook measured) {
    this.office = office;
    this.ours = ours;
    this.measured = measured;
  }

  void lay(Laid laid) {
    number++;
    String drawing = drawing(laid.blank().sheet());
    Element anchor =
        laid instanceof Laid.Photo photo
            ? anchor(photo, drawing)
            : anchor((Laid.Drawn) laid, drawing);
    Element all = office.root(drawing);
    all.appendChild(all.getOwnerDocument().importNode(anchor, true));
    office.put(drawing, all);
  }

  private Element anchor(Laid.Photo laid, String drawing) {
    String media = free("xl/media/letterhead_photo", ".jpeg");
    office.parts().put(media, laid.photograph().bytes());
    type(media, Ooxml.JPEG);
    Size size = size(laid.blank(), laid.photograph().wide(), laid.photograph().high());
    Element anchor = anchor(size, PICTURE.formatted(Xml.RELATIONS));
    Xml.all(anchor, "blip")
        .forEach(
            blip -> blip.setAttributeNS(Xml.RELATIONS, "r:embed", link(drawing, "image", media)));
    Xml.all(anchor, "cNvPr").forEach(shape -> shape.setAttribute("descr", laid.words()));
    size.into(Xml.all(anchor, "ext"));
    return named(anchor, "Letterhead photograph " + number);
  }

  /**
   * What our document draws, once more: each shape of a map as it is, a chart with its own part.
   */
  private Element anchor(Laid.Drawn laid, String drawing) {
    Element shape = laid.shape();
    boolean isChart = shape.getLocalName().equals("graphicFrame");
    Element drawn = Xml.all(shape, "ext").get(0);
    Size size = size(laid.blank(), Xml.number(drawn, "cx"), Xml.number(drawn, "cy"));
    Element anchor = anchor(size, "");
    Element copy = (Element) anchor.getOwnerDocument().importNode(shape, true);
    anchor.insertBefore(copy, Xml.child(anchor, "clientData").orElseThrow());
    if (isChart) {
      String chart = free("xl/charts/letterhead_chart", ".xml");
      office.parts().put(chart, ours.parts().get(chartOf(laid)));
      type(chart, Ooxml.CHART);
      Xml.all(copy, "chart")
          .forEach(
              each -> each.setAttributeNS(Xml.RELATIONS, "r:id", link(drawing, "chart", chart)));
    }
    size.into(List.of(Xml.all(copy, "ext").get(0)));
    return named(anchor, "");
  }

  private String chartOf(Laid.Drawn laid) {
    String id = Xml.all(laid.shape(), "chart").get(0).getAttributeNS(Xml.RELATIONS, "id");
    return ours.relations(laid.drawing()).stream()
        .filter(each -> each.id().equals(id))
        .findFirst()
        .orElseThrow()
        .target();
  }

  /** Gives each shape a number of its own, and the first a name, if there is one. */
  private Element named(Element anchor, String name) {
    List<Element> shapes = Xml.all(anchor, "cNvPr");
    for (int i = 0; i < shapes.size(); i++) {
      shapes.get(i).setAttribute("id", String.valueOf(FIRST_SHAPE * number + i));
    }
    if (!name.isEmpty()) {
      shapes.get(0).setAttribute("name", name);
    }
    return anchor;
  }

  private String free(String begins, String ends) {
    int at = 1;
    while (office.parts().containsKey(begins + at + ends)) {
      at++;
    }
    return begins + at + ends;
  }

  /** The part that holds what is drawn upon a sheet; made, if there is none. */
  private String drawing(Sheet sheet) {
    return Relation.of(office.file(), office.parts(), sheet.part()).stream()
        .filter(each -> each.is("drawing"))
        .map(Relation::target)
        .findFirst()
        .orElseGet(
            () -> {
              String part = free("xl/drawings/letterhead_drawing", ".xml");
              office.put(part, "<xdr:wsDr xmlns:xdr=\"%s\"/>".formatted(Ooxml.PLACES));
              type(part, Ooxml.DRAWING);
              String id = link(sheet.part(), "drawing", part);
              Xml.section(sheet.root(), "drawing", ORDER).setAttributeNS(Xml.RELATIONS, "r:id", id);
              office.put(sheet.part(), sheet.root());
              return part;
            });
  }

  private String link(String from, String kind, String to) {
    String part = Relation.part(from);
    if (!office.parts().containsKey(part)) {
      office.put(part, "<Relationships xmlns=\"%s\"/>".formatted(Ooxml.PACKAGE_LINKS));
    }
    Element links = office.root(part);
    String id = "letterhead" + (Xml.children(links).size() + 1);
    Element link = links.getOwnerDocument().createElementNS(Ooxml.PACKAGE_LINKS, "Relationship");
    link.setAttribute("Id", id);
    link.setAttribute("Type", Xml.RELATIONS + "/" + kind);
    link.setAttribute("Target", "/" + to);
    links.appendChild(link);
    office.put(part, links);
    return id;
  }

  private void type(String part, String type) {
    Element types = office.root(PartFile.KINDS);
    Element override =
        types.getOwnerDocument().createElementNS(types.getNamespaceURI(), "Override");
    override.setAttribute("PartName", "/" + part);
    override.setAttribute("ContentType", type);
    types.appendChild(override);
    office.put(PartFile.KINDS, types);
  }

  /** How large something is drawn. */
  private record Size(int column, int row, long wide, long high) {

    void into(List<Element> extents) {
      for (Element each : extents) {
        each.setAttribute("cx", String.valueOf(wide));
        each.setAttribute("cy", String.valueOf(high));
      }
    }
  }

  /** As large as a cell has room for, in its own shape. */
  private Size size(OfficeFile.Blank blank, double wide, double high) {
    Cell cell = blank.cell();
    XSSFSheet sheet = measured.getSheet(blank.sheet().name());
    CellRangeAddress area =
        sheet.getMergedRegions().stream()
            .filter(each -> each.isInRange(cell.row(), cell.column()))
            .findFirst()
            .orElse(new CellRangeAddress(cell.row(), cell.row(), cell.column(), cell.column()));
    double room = 0;
    for (int column = area.getFirstColumn(); column <= area.getLastColumn(); column++) {
      room += sheet.getColumnWidthInPixels(column) * Units.EMU_PER_PIXEL;
    }
    double height = 0;
    for (int row = area.getFirstRow(); row <= area.getLastRow(); row++) {
      double points =
          sheet.getRow(row) == null
              ? sheet.getDefaultRowHeightInPoints()
              : sheet.getRow(row).getHeightInPoints();
      height += points * Units.EMU_PER_POINT;
    }
    double scale = Math.min(room / wide, height / high);
    return new Size(
        area.getFirstColumn(), area.getFirstRow(), (long) (wide * scale), (long) (high * scale));
  }

  private Element anchor(Size size, String shape) {
    String text =
        ANCHOR.formatted(
            Ooxml.PLACES, Ooxml.SHAPES, size.column(), size.row(), size.wide(), size.high(), shape);
    return Xml.root(office.file(), text.getBytes(StandardCharsets.UTF_8));
  }
}
